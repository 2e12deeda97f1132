// SPDX-License-Identifier: Apache-2.0
#include "command/mended.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <map>
#include <ostream>

#include "diagnostic/render.hpp"

namespace maslin::command {
namespace {

// Edits of one file, from its end to its start, so that no place moves before it is used.
std::string edited(std::string text, std::vector<Edit> edits) {
  std::stable_sort(edits.begin(), edits.end(),
                   [](const Edit& a, const Edit& b) { return a.span.begin > b.span.begin; });
  for (const Edit& edit : edits) {
    text.replace(edit.span.begin, edit.span.end - edit.span.begin, edit.text);
  }
  return text;
}

std::string name_beside(const std::string& path, int number) {
  const std::filesystem::path whole(path);
  const std::string count = number == 1 ? "" : "-" + std::to_string(number);
  return (whole.parent_path() /
          (whole.stem().string() + ".mended" + count + whole.extension().string()))
      .string();
}

int write_one(const std::string& path, const std::string& text, Files& files,
              const Streams& streams) {
  constexpr int most = 100;
  for (int number = 1; number <= most; ++number) {
    const std::string beside = name_beside(path, number);
    const auto failed = files.write_new(beside, text);
    if (!failed) {
      streams.err << fmt::format("the mended text is in {}\n", printable(beside));
      return findings;
    }
    if (failed->kind == ReadError::Kind::exists) continue;
    streams.err << fmt::format("{} cannot be written: {}\n", printable(beside), failed->reason);
    return system_failed;
  }
  streams.err << fmt::format("there are {} mended texts beside {} already\n", most,
                             printable(path));
  return system_failed;
}

}  // namespace

int write_mended(const Session& session, const std::vector<plan::Mend>& mends, Files& files,
                 const Streams& streams) {
  const auto mend = std::find_if(mends.begin(), mends.end(),
                                 [](const plan::Mend& each) { return !each.edits.empty(); });
  if (mend == mends.end()) {
    streams.err << "there is no mend that changes the basket\n";
    return findings;
  }
  streams.err << fmt::format("mended: {}\n", printable(mend->text));
  std::map<std::uint32_t, std::vector<Edit>> by_file;
  for (const Edit& edit : mend->edits) by_file[edit.span.file.index].push_back(edit);
  for (const auto& [index, edits] : by_file) {
    const SourceFile& file = session.sources().file(FileId(index));
    // Standard input has no place beside it.
    if (file.name().front() == '<') {
      streams.out << edited(std::string(file.text()), edits);
      continue;
    }
    const int code =
        write_one(file.name(), edited(std::string(file.text()), edits), files, streams);
    if (code != findings) return code;
  }
  return findings;
}

}  // namespace maslin::command
