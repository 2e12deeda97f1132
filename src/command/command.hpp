// SPDX-License-Identifier: Apache-2.0
// The command line. One file a subcommand; each registers itself and returns its exit code.
#pragma once

#include <iosfwd>
#include <string>
#include <string_view>
#include <vector>

#include "driver/files.hpp"
#include "driver/session.hpp"

namespace maslin::command {

inline constexpr std::string_view version = "0.1.0";

enum Exit : int {
  done = 0,
  findings = 1,  // the input has errors, breaks a rule, or there is no plan
  wrong_usage = 2,
  system_failed = 3,  // a file or the system
};

class Envelope;

struct Streams {
  std::istream& in;
  std::ostream& out;
  std::ostream& err;
  bool color = false;            // whether err is a terminal that wants colour
  bool one_line = false;         // diagnostics for an editor
  Envelope* envelope = nullptr;  // with --json: everything goes in here, and nothing is printed
};

// What every subcommand that reads files takes.
struct Inputs {
  std::vector<std::string> paths;
  std::vector<std::string> libraries;
  std::string stdin_name = "<stdin>";
};

int run(int argc, const char* const* argv, Files& files, const Streams& streams);

// Loads and compiles; prints what was found. Nothing (0) when the program may be used.
int load(Session& session, const Inputs& inputs, const Streams& streams);
// Prints every diagnostic (or puts it in the envelope) and counts them; the exit code they ask for.
int print_diagnostics(Session& session, const Streams& streams);

struct PlanOptions {
  std::string to = "text";
  std::string aim;
  std::string fill;
  std::string taste;
  bool mend = false;
  std::string framework;
  std::string basket;
  std::string kitchen;
};
int plan(const Inputs& inputs, const PlanOptions& options, Files& files, const Streams& streams);

struct LabelOptions {
  bool card = false;  // for the stall: allergens, and nothing else
  std::string batch;  // which of what was made
};
// Takes the same choices as a plan; `to` is text, html or json.
int label(const Inputs& inputs, const PlanOptions& options, const LabelOptions& label_options,
          Files& files, const Streams& streams);
int check(const Inputs& inputs, Files& files, const Streams& streams);
int explain(const std::vector<std::string>& words, const Inputs& inputs, Files& files,
            const Streams& streams);

}  // namespace maslin::command
