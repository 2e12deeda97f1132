// SPDX-License-Identifier: Apache-2.0
// What a run prints with --json: one object on standard output, whatever happens.
#pragma once

#include <memory>
#include <nlohmann/json_fwd.hpp>
#include <string>
#include <string_view>

#include "diagnostic/diagnostic.hpp"
#include "source/source.hpp"

namespace maslin::command {

class Envelope {
 public:
  Envelope();
  ~Envelope();
  Envelope(const Envelope&) = delete;
  Envelope& operator=(const Envelope&) = delete;

  // Not named where the words on the command line name no subcommand.
  void set_command(const std::string& name);
  void set_diagnostics(const Sources& sources, const Diagnostics& diagnostics);
  // Under the name of what it is: "plan", "check", "explain", "blend", "mended".
  void set_result(const std::string& name, nlohmann::ordered_json value);
  // Why the command line is wrong.
  void set_wrong_usage(const std::string& message);
  // What --help and --version answer.
  void set_help(const std::string& text);

  // Ends with a line end. What is no UTF-8 is replaced, so that it always can be read.
  std::string text(int exit_code) const;

 private:
  struct Content;
  std::unique_ptr<Content> content_;
};

// Whether the words ask for JSON; asked before they are understood, since they may be wrong.
bool wants_json(int argc, const char* const* argv);

}  // namespace maslin::command
