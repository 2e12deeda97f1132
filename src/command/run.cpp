// SPDX-License-Identifier: Apache-2.0
#include <CLI/CLI.hpp>

#include <fmt/format.h>

#include <istream>
#include <iterator>
#include <ostream>
#include <sstream>

#include "command/command.hpp"
#include "command/envelope.hpp"
#include "diagnostic/one_line.hpp"
#include "diagnostic/render.hpp"

namespace maslin::command {
namespace {

// How a run answers.
struct Manner {
  bool json = false;
  bool one_line = false;
};

[[maybe_unused]] void add_manner(CLI::App& app, Manner& manner) {
  app.add_flag("--json", manner.json, "everything as one JSON object");
  app.add_flag("--short", manner.one_line, "one line a message, for editors");
}

void add_inputs(CLI::App& app, Inputs& inputs, bool required) {
  auto* files = app.add_option("files", inputs.paths, "files of maslin text; - is standard input");
  if (required) files->required();
  app.add_option("--library", inputs.libraries, "a folder that `use` may reach as well");
  app.add_option("--stdin-filename", inputs.stdin_name,
                 "what standard input is called in messages");
}

void print_one(const Sources& sources, const Diagnostic& diagnostic, const Streams& streams) {
  if (streams.envelope != nullptr) return;
  if (streams.one_line) {
    streams.err << one_line(sources, diagnostic);
  } else {
    streams.err << render_text(sources, diagnostic, {streams.color}) << '\n';
  }
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
  if (streams.envelope != nullptr) {
    streams.envelope->set_diagnostics(session.sources(), session.diagnostics());
  }
  // More than anybody reads; an editor takes them all.
  constexpr std::size_t most = 1000;
  bool unreadable = false;
  std::size_t warnings = 0;
  std::size_t printed = 0;
  for (const Diagnostic& each : session.diagnostics().all()) {
    if (streams.one_line || printed++ < most) print_one(session.sources(), each, streams);
    unreadable =
        unreadable || each.code == Code::unreadable_file || each.code == Code::file_too_large;
    if (severity_of(each.code) == Severity::warning) ++warnings;
  }
  if (printed > most && streams.envelope == nullptr) {
    streams.err << fmt::format("… and {} more messages\n", printed - most);
  }
  const std::size_t errors = session.diagnostics().error_count();
  if (errors + warnings > 1 && streams.envelope == nullptr && !streams.one_line) {
    streams.err << fmt::format("{} error{}, {} warning{}\n", errors, errors == 1 ? "" : "s",
                               warnings, warnings == 1 ? "" : "s");
  }
  if (unreadable) return system_failed;
  return errors > 0 ? findings : done;
}

namespace {

class CommandLine {
 public:
  CommandLine() {
    // At most one here, and one is asked for below, so that a word that names none is told first.
    app_.require_subcommand(0, 1);
    app_.set_version_flag("--version", fmt::format("maslin {}", version));
    add_manner(app_, manner_);
    add_plan();
    add_label();
    add_check();
    add_explain();
  }

  int run(int argc, const char* const* argv, Files& files, Streams streams) {
    try {
      app_.parse(argc, argv);
      if (app_.get_subcommands().empty()) throw CLI::RequiredError("a subcommand");
      check_manner();
    } catch (const CLI::ParseError& error) {
      return answer(error, streams);
    }
    name_command(streams);
    streams.one_line = manner_.one_line;
    if (plan_->parsed()) return plan(inputs_, options_, files, streams);
    if (label_->parsed()) return label(inputs_, options_, label_options_, files, streams);
    if (check_->parsed()) return check(inputs_, files, streams);
    return explain(words_, inputs_, files, streams);
  }

 private:
  void add_plan() {
    plan_ = app_.add_subcommand("plan", "what to weigh of everything");
    plan_->footer(
        "Examples:\n"
        "  maslin plan chutney.maslin basket.maslin kitchen.maslin\n"
        "  maslin plan all.maslin --aim \"4 kg finished\"\n"
        "  maslin plan all.maslin --fill \"12 of 282 ml\"\n"
        "  maslin plan basket.maslin --framework \"orchard chutney\"     (from the library)");
    add_inputs(*plan_, inputs_, true);
    add_aims(*plan_);
    plan_->add_flag("--mend", options_.mend,
                    "where nothing fits, write the mended basket beside the old one");
    add_choices(*plan_);
    plan_
        ->add_option("--to", options_.to,
                     "text, markdown, html (one side of A4), shopping or csv (what to get),\n"
                     "json, or blend: the linear programme, as JSON")
        ->check(CLI::IsMember({"text", "markdown", "html", "shopping", "csv", "json", "blend"}));
    add_manner(*plan_, manner_);
  }

  // What is made, and how much of it.
  void add_aims(CLI::App& app) {
    app.add_option("--aim", options_.aim,
                   "\"4 kg finished\" or \"3 kg prepared\"; without it, as much as fits");
    app.add_option("--fill", options_.fill,
                   "\"12 of 282 ml\", also several after commas: as much as fills these jars");
    app.add_option("--taste", options_.taste, "a variant that the framework declares");
  }

  void add_choices(CLI::App& app) {
    app.add_option("--framework", options_.framework, "which framework, where there are several");
    app.add_option("--basket", options_.basket, "which basket, where there are several");
    app.add_option("--kitchen", options_.kitchen, "which kitchen, where there are several");
  }

  void add_label() {
    label_ = app_.add_subcommand("label", "what to write on the jars");
    label_->footer(
        "Examples:\n"
        "  maslin label chutney.maslin basket.maslin kitchen.maslin\n"
        "  maslin label all.maslin --to html > labels.html\n"
        "  maslin label all.maslin --card              (allergens, for the stall)\n"
        "  maslin label all.maslin --batch \"2026-10-10 a\"    (by what was used)\n"
        "Where the files hold a batch, each of its boils gets its labels by what went into it.\n"
        "The kitchen says whose law holds: law \"Great Britain\"");
    add_inputs(*label_, inputs_, true);
    add_aims(*label_);
    label_->add_flag("--card", label_options_.card, "the allergens alone, for the stall");
    add_choices(*label_);
    label_->add_option("--batch", label_options_.batch, "which batch, where there are several");
    label_->add_option("--to", options_.to, "text, html or json")
        ->check(CLI::IsMember({"text", "html", "json"}));
    add_manner(*label_, manner_);
  }

  void add_check() {
    check_ = app_.add_subcommand("check", "what is wrong with these files");
    check_->footer("Example:\n  maslin check chutney.maslin basket.maslin");
    add_inputs(*check_, inputs_, true);
    add_manner(*check_, manner_);
  }

  void add_explain() {
    explain_ = app_.add_subcommand("explain",
                                   "a diagnostic, a term of the sheet, an ingredient, class, "
                                   "framework, route, standard or unit");
    explain_->footer(
        "Examples:\n"
        "  maslin explain too-little\n"
        "  maslin explain quince\n"
        "  maslin explain sharp fruit\n"
        "  maslin explain water activity\n"
        "  maslin explain route sugar\n"
        "  maslin explain            (what there is to explain)");
    explain_->add_option("name", words_, "what to explain");
    explain_->add_option("--with", inputs_.paths, "files that declare it");
    explain_->add_option("--library", inputs_.libraries, "a folder that `use` may reach as well");
    add_manner(*explain_, manner_);
  }

  // One answer has one form.
  void check_manner() const {
    if (!options_.aim.empty() && !options_.fill.empty()) {
      throw CLI::ExcludesError("--aim", "--fill");
    }
    const bool to_json = options_.to == "json" || options_.to == "blend";
    const bool to = plan_->count("--to") + label_->count("--to") > 0;
    if (manner_.json && to && !to_json) {
      throw CLI::ExcludesError("--json", "--to " + options_.to);
    }
    if (manner_.one_line && (manner_.json || to_json)) {
      throw CLI::ExcludesError("--short", "JSON");
    }
  }

  void name_command(const Streams& streams) const {
    if (streams.envelope == nullptr) return;
    for (const CLI::App* each : app_.get_subcommands()) {
      streams.envelope->set_command(each->get_name());
    }
  }

  // To --help and --version, and to what is wrong on the command line.
  int answer(const CLI::ParseError& error, const Streams& streams) const {
    std::ostringstream asked;
    std::ostringstream wrong;
    const int code = app_.exit(error, asked, wrong) == 0 ? done : wrong_usage;
    if (streams.envelope == nullptr) {
      streams.out << asked.str();
      streams.err << wrong.str();
      return code;
    }
    name_command(streams);
    if (code == done) {
      streams.envelope->set_help(asked.str());
    } else {
      streams.envelope->set_wrong_usage(error.what());
    }
    return code;
  }

  CLI::App app_{"maslin compiles a way of preserving against this week's basket", "maslin"};
  CLI::App* plan_ = nullptr;
  CLI::App* label_ = nullptr;
  CLI::App* check_ = nullptr;
  CLI::App* explain_ = nullptr;
  Manner manner_;
  Inputs inputs_;
  PlanOptions options_;
  LabelOptions label_options_;
  std::vector<std::string> words_;
};

}  // namespace

int run(int argc, const char* const* argv, Files& files, const Streams& streams) {
  CommandLine line;
  if (!wants_json(argc, argv)) return line.run(argc, argv, files, streams);
  Envelope envelope;
  // Nothing but the envelope may reach standard output.
  std::ostringstream unused;
  const int code =
      line.run(argc, argv, files, {streams.in, unused, unused, false, false, &envelope});
  streams.out << envelope.text(code);
  return code;
}

}  // namespace maslin::command
