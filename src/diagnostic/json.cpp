// SPDX-License-Identifier: Apache-2.0
#include "diagnostic/json.hpp"

#include <nlohmann/json.hpp>

#include "diagnostic/render.hpp"

namespace maslin {
namespace {

using Json = nlohmann::ordered_json;

Json position_json(const SourceFile& file, std::uint32_t offset) {
  const Position position = file.position(offset);
  return {{"line", position.line}, {"column", position.column}, {"offset", offset}};
}

// Words are for showing, so nothing in them may steer a terminal; file names and edits are for
// using, and stay as they are.
Json label_json(const Sources& sources, const Label& label) {
  Json json = place_json(sources, label.span);
  json["text"] = printable(label.text);
  return json;
}

Json fix_json(const Sources& sources, const Fix& fix) {
  Json edits = Json::array();
  for (const Edit& edit : fix.edits) {
    Json json = place_json(sources, edit.span);
    json["text"] = edit.text;
    edits.push_back(std::move(json));
  }
  return {{"kind", fix.kind == Fix::Kind::safe ? "safe" : "suggested"},
          {"title", printable(fix.title)},
          {"edits", std::move(edits)}};
}

Json diagnostic_json(const Sources& sources, const Diagnostic& diagnostic) {
  Json json = {{"code", name_of(diagnostic.code)},
               {"severity", severity_of(diagnostic.code) == Severity::error ? "error" : "warning"},
               {"message", printable(diagnostic.message)}};
  if (diagnostic.primary) json["primary"] = label_json(sources, *diagnostic.primary);
  json["because"] = Json::array();
  for (const Label& label : diagnostic.because) {
    json["because"].push_back(label_json(sources, label));
  }
  json["why"] = printable(diagnostic.why);
  json["mends"] = Json::array();
  for (const std::string& mend : diagnostic.mends) json["mends"].push_back(printable(mend));
  json["fixes"] = Json::array();
  for (const Fix& fix : diagnostic.fixes) json["fixes"].push_back(fix_json(sources, fix));
  return json;
}

}  // namespace

Json place_json(const Sources& sources, Span span) {
  const SourceFile& file = sources.file(span.file);
  return {{"file", file.name()},
          {"begin", position_json(file, span.begin)},
          {"end", position_json(file, span.end)}};
}

Json diagnostics_json(const Sources& sources, const Diagnostics& diagnostics) {
  Json json = Json::array();
  for (const Diagnostic& each : diagnostics.all()) json.push_back(diagnostic_json(sources, each));
  return json;
}

}  // namespace maslin
