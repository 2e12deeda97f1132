// SPDX-License-Identifier: Apache-2.0
#include "support/mending.hpp"

#include <algorithm>

namespace maslin::test {

std::string edited(std::string text, std::vector<Edit> edits) {
  std::stable_sort(edits.begin(), edits.end(),
                   [](const Edit& a, const Edit& b) { return a.span.begin > b.span.begin; });
  for (const Edit& edit : edits) {
    text.replace(edit.span.begin, edit.span.end - edit.span.begin, edit.text);
  }
  return text;
}

std::optional<std::string> aim_in_words(const std::string& mend) {
  const std::string start = "make no more than ";
  if (mend.rfind(start, 0) != 0) return std::nullopt;
  const std::size_t of = mend.find(" of ");
  const bool finished = mend.find("finished", of) != std::string::npos;
  return mend.substr(start.size(), of - start.size()) + (finished ? " finished" : " prepared");
}

}  // namespace maslin::test
