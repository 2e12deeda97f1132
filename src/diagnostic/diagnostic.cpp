// SPDX-License-Identifier: Apache-2.0
#include "diagnostic/diagnostic.hpp"

#include <algorithm>
#include <tuple>
#include <utility>

#include "base/embedded.hpp"

namespace maslin {
namespace {

struct Entry {
  std::string_view name;
  Severity severity;
  std::string_view summary;
};

constexpr Entry entries[] = {
#define MASLIN_CODE(identifier, name, severity, summary) {name, Severity::severity, summary},
#include "diagnostic/codes.def"
#undef MASLIN_CODE
};

const Entry& entry(Code code) { return entries[static_cast<std::size_t>(code)]; }

}  // namespace

std::string_view name_of(Code code) { return entry(code).name; }
std::string_view summary_of(Code code) { return entry(code).summary; }
Severity severity_of(Code code) { return entry(code).severity; }

std::optional<Code> code_named(std::string_view name) {
  for (const Code code : all_codes()) {
    if (name_of(code) == name) return code;
  }
  return std::nullopt;
}

const std::vector<Code>& all_codes() {
  static const std::vector<Code> codes = [] {
    std::vector<Code> list;
    for (std::size_t i = 0; i < std::size(entries); ++i) list.push_back(static_cast<Code>(i));
    return list;
  }();
  return codes;
}

std::string_view page_of(Code code) {
  const std::string path = std::string(name_of(code)) + ".md";
  for (const embedded::File& file : embedded::explain_pages()) {
    if (file.path == path) return file.text;
  }
  return {};
}

Diagnostic& Diagnostics::report(Code code, Span span, std::string message, std::string label) {
  if (!places_.emplace(code, span.file.index, span.begin, span.end).second) {
    dropped_ = {};
    return dropped_;
  }
  Diagnostic diagnostic;
  diagnostic.code = code;
  diagnostic.message = std::move(message);
  diagnostic.primary = Label{span, std::move(label)};
  all_.push_back(std::move(diagnostic));
  return all_.back();
}

Diagnostic& Diagnostics::report_without_place(Code code, std::string message) {
  Diagnostic diagnostic;
  diagnostic.code = code;
  diagnostic.message = std::move(message);
  all_.push_back(std::move(diagnostic));
  return all_.back();
}

bool Diagnostics::has_errors() const { return error_count() > 0; }

std::size_t Diagnostics::error_count() const {
  return static_cast<std::size_t>(std::count_if(all_.begin(), all_.end(), [](const auto& d) {
    return severity_of(d.code) == Severity::error;
  }));
}

void Diagnostics::sort() {
  const auto place = [](const Diagnostic& d) {
    if (!d.primary) return std::tuple(std::size_t{0}, std::uint32_t{0}, std::uint32_t{0});
    const Span span = d.primary->span;
    return std::tuple(std::size_t{span.file.index} + 1, span.begin, span.end);
  };
  std::stable_sort(all_.begin(), all_.end(),
                   [&](const auto& a, const auto& b) { return place(a) < place(b); });
}

}  // namespace maslin
