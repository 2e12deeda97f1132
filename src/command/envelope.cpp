// SPDX-License-Identifier: Apache-2.0
#include "command/envelope.hpp"

#include <nlohmann/json.hpp>

#include "command/command.hpp"
#include "diagnostic/json.hpp"

namespace maslin::command {
namespace {

using Json = nlohmann::ordered_json;

constexpr int schema_version = 1;

}  // namespace

struct Envelope::Content {
  Json command;
  Json diagnostics = Json::array();
  Json results = Json::object();
};

Envelope::Envelope() : content_(std::make_unique<Content>()) {}
Envelope::~Envelope() = default;

void Envelope::set_command(const std::string& name) { content_->command = name; }

void Envelope::set_diagnostics(const Sources& sources, const Diagnostics& diagnostics) {
  content_->diagnostics = diagnostics_json(sources, diagnostics);
}

void Envelope::set_result(const std::string& name, Json value) {
  content_->results[name] = std::move(value);
}

void Envelope::set_wrong_usage(const std::string& message) {
  set_result("usage", {{"message", message}});
}

void Envelope::set_help(const std::string& text) { set_result("usage", {{"text", text}}); }

std::string Envelope::text(int exit_code) const {
  Json json = {{"maslin", version}, {"schema", schema_version}};
  json["command"] = content_->command;
  json["exit"] = exit_code;
  json["diagnostics"] = content_->diagnostics;
  for (const auto& [name, value] : content_->results.items()) json[name] = value;
  constexpr int indent = 2;
  return json.dump(indent, ' ', false, Json::error_handler_t::replace) + "\n";
}

bool wants_json(int argc, const char* const* argv) {
  for (int i = 1; i < argc; ++i) {
    const std::string_view word = argv[i];
    if (word == "--") return false;
    const bool valued = word == "--to" && i + 1 < argc;
    const std::string_view to = valued                      ? std::string_view(argv[i + 1])
                                : word.starts_with("--to=") ? word.substr(5)
                                                            : std::string_view();
    if (word == "--json" || to == "json" || to == "blend") return true;
  }
  return false;
}

}  // namespace maslin::command
