// SPDX-License-Identifier: Apache-2.0
// One run: files in, finished stages out. The command line and the language server stand on this.
#pragma once

#include <deque>
#include <map>
#include <string>
#include <vector>

#include "diagnostic/diagnostic.hpp"
#include "driver/files.hpp"
#include "language/resolve.hpp"
#include "source/source.hpp"
#include "syntax/tree.hpp"

namespace maslin {

// The standard library from its texts, which are the only files of `sources`.
language::Resolved read_library(const Sources& sources, Diagnostics& diagnostics);

class Session {
 public:
  explicit Session(Files& files);

  // Folders that `use` may reach beside that of the file named.
  void allow_folder(const std::string& folder);
  // Reads a file and what it uses. False when it could not be read at all: then the exit is 3.
  bool load(const std::string& path);
  // A text that is already at hand (standard input), named as given.
  void load_text(const std::string& name, std::string text);
  // After every file is loaded: reading, names, types and checks.
  void compile();

  const Sources& sources() const { return sources_; }
  Diagnostics& diagnostics() { return diagnostics_; }
  const Diagnostics& diagnostics() const { return diagnostics_; }
  const language::Program& program() const { return resolved_.program; }
  language::Program& program() { return resolved_.program; }
  const std::deque<syntax::SyntaxTree>& trees() const { return trees_; }
  const language::Names& names() const { return resolved_.names; }
  // The frameworks, baskets and kitchens that the user's own files declare.
  std::size_t first_own_framework() const { return resolved_.program.library_frameworks; }

 private:
  bool load_file(const std::string& path, const std::string& shown, const Span* user,
                 const std::string& root_folder);
  void take_text(const std::string& shown, std::string text, const std::string& path,
                 const std::string& root_folder);
  bool check_text(FileId file);
  void follow_uses(const syntax::SyntaxTree& tree, const std::string& path,
                   const std::string& root_folder);
  bool is_allowed(const std::string& path, const std::string& root_folder) const;
  void load_library();

  Files& files_;
  Sources sources_;
  Diagnostics diagnostics_;
  std::deque<syntax::SyntaxTree> trees_;
  std::vector<std::string> folders_;
  enum class State : unsigned char { loading, loaded };
  std::map<std::string, State> seen_;  // by canonical path
  language::Resolved resolved_;
};

}  // namespace maslin
