// SPDX-License-Identifier: Apache-2.0
#include "source/source.hpp"

#include <algorithm>
#include <utility>

namespace maslin {

SourceFile::SourceFile(std::string name, std::string text)
    : name_(std::move(name)), owned_(std::move(text)) {}

SourceFile SourceFile::borrowed(std::string name, std::string_view text) {
  SourceFile file(std::move(name), {});
  file.borrowed_ = text;
  return file;
}

const std::vector<std::uint32_t>& SourceFile::line_begins() const {
  if (line_begins_.empty()) {
    line_begins_.push_back(0);
    const std::string_view all = text();
    for (std::size_t at = all.find('\n'); at != std::string_view::npos;
         at = all.find('\n', at + 1)) {
      line_begins_.push_back(static_cast<std::uint32_t>(at + 1));
    }
  }
  return line_begins_;
}

Position SourceFile::position(std::uint32_t offset) const {
  const auto& begins = line_begins();
  const auto after = std::upper_bound(begins.begin(), begins.end(), offset);
  const auto line = static_cast<std::uint32_t>(after - begins.begin());
  // Places are asked for in their order, so the next one on a line counts on from the last.
  const bool on = last_.position.line == line && last_.offset <= offset && last_.offset > 0;
  if (!on) last_ = {begins[line - 1], {line, 1}};
  const std::string_view all = text();
  const auto end = static_cast<std::uint32_t>(std::min<std::size_t>(offset, all.size()));
  for (; last_.offset < end; ++last_.offset) {
    const bool continuation = (static_cast<unsigned char>(all[last_.offset]) & 0xc0) == 0x80;
    if (!continuation) ++last_.position.column;
  }
  return last_.position;
}

std::string_view SourceFile::line(std::uint32_t number) const {
  const std::uint32_t begin = line_begin(number);
  std::string_view rest = text().substr(begin);
  if (number < line_count()) rest = rest.substr(0, line_begin(number + 1) - begin - 1);
  if (!rest.empty() && rest.back() == '\r') rest.remove_suffix(1);
  return rest;
}

std::uint32_t SourceFile::line_begin(std::uint32_t number) const {
  return line_begins()[number - 1];
}

std::uint32_t SourceFile::line_count() const {
  return static_cast<std::uint32_t>(line_begins().size());
}

FileId Sources::add(SourceFile file) {
  files_.push_back(std::move(file));
  return FileId(files_.size() - 1);
}

}  // namespace maslin
