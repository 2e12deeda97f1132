// SPDX-License-Identifier: Apache-2.0
// Files that are only in memory, and the codes and fixes of a text read from them.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "diagnostic/diagnostic.hpp"
#include "driver/files.hpp"

namespace maslin::test {

using Texts = std::map<std::string, std::string>;  // by name

class MemoryFiles final : public Files {
 public:
  explicit MemoryFiles(const Texts& texts);

  Result<std::string, ReadError> read(const std::string& path, std::size_t most) override;
  std::optional<ReadError> write_new(const std::string& path, const std::string& text) override;
  std::string canonical(const std::string& path) override;

 private:
  Texts texts_;
};

// What is reported of these texts, in the order of the report. `roots` are named to the program.
std::vector<Diagnostic> diagnostics_of(const Texts& texts, const std::vector<std::string>& roots);

// Applies each safe fix that is offered for these texts by itself, and reads the result again.
// A line for each fix after which its code is there as often as before; empty when all is well.
std::string failing_fixes(const Texts& texts, const std::vector<std::string>& roots);

}  // namespace maslin::test
