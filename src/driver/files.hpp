// SPDX-License-Identifier: Apache-2.0
// All reading of files behind one interface, so that tests need no disk.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "base/result.hpp"

namespace maslin {

struct ReadError {
  enum class Kind : unsigned char { missing, folder, denied, too_large, exists, failed };
  Kind kind{};
  std::string reason;  // the system's own words
};

class Files {
 public:
  Files() = default;
  Files(const Files&) = delete;
  Files& operator=(const Files&) = delete;
  virtual ~Files() = default;

  // At most `most` bytes; a larger file is an error, however large it is.
  virtual Result<std::string, ReadError> read(const std::string& path, std::size_t most) = 0;
  // Writes a new file whole or not at all: beside it first, synced, then renamed. A file that is
  // there already is never touched. The error's reason otherwise.
  virtual std::optional<ReadError> write_new(const std::string& path, const std::string& text) = 0;
  // Absolute, links followed, so that two ways to one file are one.
  virtual std::string canonical(const std::string& path) = 0;
};

// The disk.
class DiskFiles final : public Files {
 public:
  Result<std::string, ReadError> read(const std::string& path, std::size_t most) override;
  std::optional<ReadError> write_new(const std::string& path, const std::string& text) override;
  std::string canonical(const std::string& path) override;
};

}  // namespace maslin
