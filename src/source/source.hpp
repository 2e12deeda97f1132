// SPDX-License-Identifier: Apache-2.0
// Texts, places in them, and where a place is for a person (line and column).
#pragma once

#include <cstdint>
#include <deque>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/id.hpp"

namespace maslin {

struct FileTag {};
using FileId = Id<FileTag>;

// A run of bytes of one file. `begin == end` is a place between two bytes.
struct Span {
  FileId file;
  std::uint32_t begin = 0;
  std::uint32_t end = 0;

  friend bool operator==(const Span&, const Span&) = default;
};

// From the start of `first` to the end of `last`; both of one file.
inline Span joined(Span first, Span last) { return {first.file, first.begin, last.end}; }

// Both counted from 1; the column counts characters (code points), as a person does.
struct Position {
  std::uint32_t line = 1;
  std::uint32_t column = 1;
};

class SourceFile {
 public:
  SourceFile(std::string name, std::string text);
  // For texts that outlive every SourceFile (the embedded library); nothing is copied.
  static SourceFile borrowed(std::string name, std::string_view text);

  const std::string& name() const { return name_; }
  std::string_view text() const { return borrowed_ ? *borrowed_ : std::string_view(owned_); }
  Position position(std::uint32_t offset) const;
  std::string_view line(std::uint32_t number) const;  // without its line end
  std::uint32_t line_begin(std::uint32_t number) const;
  std::uint32_t line_count() const;

 private:
  const std::vector<std::uint32_t>& line_begins() const;

  std::string name_;
  std::string owned_;
  std::optional<std::string_view> borrowed_;
  mutable std::vector<std::uint32_t> line_begins_;  // found when first asked for
  struct Place {
    std::uint32_t offset = 0;
    Position position;
  };
  mutable Place last_;  // that was asked for
};

// All files of one run. Ids and text views stay valid as files are added.
class Sources {
 public:
  FileId add(SourceFile file);
  const SourceFile& file(FileId id) const { return files_[id.index]; }
  std::size_t size() const { return files_.size(); }
  std::string_view text(Span span) const {
    return file(span.file).text().substr(span.begin, span.end - span.begin);
  }

 private:
  std::deque<SourceFile> files_;
};

}  // namespace maslin
