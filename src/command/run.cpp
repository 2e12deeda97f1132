// SPDX-License-Identifier: Apache-2.0
#include <CLI/CLI.hpp>

#include <fmt/format.h>

#include <istream>
#include <iterator>
#include <ostream>

#include "command/command.hpp"
#include "diagnostic/render.hpp"

namespace maslin::command {
namespace {

void add_inputs(CLI::App& app, Inputs& inputs, bool required) {
  auto* files = app.add_option("files", inputs.paths, "files of maslin text; - is standard input");
  if (required) files->required();
  app.add_option("--library", inputs.libraries, "a folder that `use` may reach as well");
  app.add_option("--stdin-filename", inputs.stdin_name,
                 "what standard input is called in messages");
}

}  // namespace

int load(Session& session, const Inputs& inputs, const Streams& streams) {
  for (const std::string& folder : inputs.libraries) session.allow_folder(folder);
  for (const std::string& path : inputs.paths) {
    if (path == "-") {
      session.load_text(inputs.stdin_name,
                        std::string(std::istreambuf_iterator<char>(streams.in), {}));
    } else {
      session.load(path);
    }
  }
  session.compile();
  return session.diagnostics().has_errors() ? print_diagnostics(session, streams) : done;
}

int print_diagnostics(Session& session, const Streams& streams) {
  session.diagnostics().sort();
  bool unreadable = false;
  std::size_t warnings = 0;
  for (const Diagnostic& each : session.diagnostics().all()) {
    streams.err << render_text(session.sources(), each, {streams.color}) << '\n';
    unreadable =
        unreadable || each.code == Code::unreadable_file || each.code == Code::file_too_large;
    if (severity_of(each.code) == Severity::warning) ++warnings;
  }
  const std::size_t errors = session.diagnostics().error_count();
  if (errors + warnings > 1) {
    streams.err << fmt::format("{} error{}, {} warning{}\n", errors, errors == 1 ? "" : "s",
                               warnings, warnings == 1 ? "" : "s");
  }
  if (unreadable) return system_failed;
  return errors > 0 ? findings : done;
}

int run(int argc, const char* const* argv, Files& files, const Streams& streams) {
  CLI::App app{"maslin compiles a way of preserving against this week's basket"};
  app.require_subcommand(1);
  app.set_version_flag("--version", std::string("maslin 0.1.0"));
  Inputs inputs;
  PlanOptions options;
  std::vector<std::string> words;

  CLI::App* plan_command = app.add_subcommand("plan", "what to weigh of everything");
  plan_command->footer(
      "Examples:\n"
      "  maslin plan chutney.maslin basket.maslin kitchen.maslin\n"
      "  maslin plan all.maslin --aim \"4 kg finished\"\n"
      "  maslin plan basket.maslin --framework \"orchard chutney\"     (from the library)");
  add_inputs(*plan_command, inputs, true);
  plan_command->add_option("--aim", options.aim,
                           "\"4 kg finished\" or \"3 kg prepared\"; without it, as much as fits");
  plan_command->add_option("--taste", options.taste, "a variant that the framework declares");
  plan_command->add_flag("--mend", options.mend,
                         "where nothing fits, write the mended basket beside the old one");
  plan_command->add_option("--framework", options.framework,
                           "which framework, where there are several");
  plan_command->add_option("--basket", options.basket, "which basket, where there are several");
  plan_command->add_option("--kitchen", options.kitchen, "which kitchen, where there are several");

  CLI::App* check_command = app.add_subcommand("check", "what is wrong with these files");
  check_command->footer("Example:\n  maslin check chutney.maslin basket.maslin");
  add_inputs(*check_command, inputs, true);

  CLI::App* explain_command =
      app.add_subcommand("explain", "a diagnostic, ingredient, class, unit or framework");
  explain_command->footer(
      "Examples:\n"
      "  maslin explain too-little\n"
      "  maslin explain quince\n"
      "  maslin explain sharp fruit\n"
      "  maslin explain            (what there is to explain)");
  explain_command->add_option("name", words, "what to explain");
  explain_command->add_option("--with", inputs.paths, "files that declare it");
  explain_command->add_option("--library", inputs.libraries,
                              "a folder that `use` may reach as well");

  try {
    app.parse(argc, argv);
  } catch (const CLI::ParseError& error) {
    const int code = app.exit(error, streams.out, streams.err);
    return code == 0 ? done : wrong_usage;
  }
  if (plan_command->parsed()) return plan(inputs, options, files, streams);
  if (check_command->parsed()) return check(inputs, files, streams);
  return explain(words, inputs, files, streams);
}

}  // namespace maslin::command
