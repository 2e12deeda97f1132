// SPDX-License-Identifier: Apache-2.0
// What every step of resolving works with.
#pragma once

#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "diagnostic/diagnostic.hpp"
#include "language/names.hpp"
#include "language/program.hpp"
#include "source/source.hpp"
#include "syntax/tree.hpp"

namespace maslin::language {

// `let`: worked out when first used.
struct NamedValue {
  syntax::View declaration;
  std::optional<Quantity> value;
  bool in_progress = false;
  bool failed = false;
  bool used = false;
};

struct Context {
  const Sources& sources;
  Diagnostics& diagnostics;
  Program& program;
  Names& names;
  std::unordered_map<std::string, NamedValue>& lets;
  int let_depth = 0;
  bool in_library = false;                  // the file at hand is the standard library's
  std::vector<IngredientId> declared = {};  // ingredients, in the order of their declarations

  bool is_library(Span span) const {
    return sources.file(span.file).name().substr(0, 5) == "<std>";
  }

  Diagnostic& report(Code code, Span span, std::string message, std::string label = {}) const {
    return diagnostics.report(code, span, std::move(message), std::move(label));
  }
};

enum class Wanted : std::uint8_t { anything, ingredient, of_class };

// The class or ingredient of this name, or nothing after a report.
std::optional<Thing> find_thing(Context& context, syntax::View name, Wanted wanted);

// "`a`, `b` or `c`".
std::string one_of(const std::vector<std::string>& names);

}  // namespace maslin::language
