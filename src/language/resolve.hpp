// SPDX-License-Identifier: Apache-2.0
// From trees to the typed model: every name found, every quantity read.
#pragma once

#include <deque>

#include "diagnostic/diagnostic.hpp"
#include "language/names.hpp"
#include "language/program.hpp"
#include "source/source.hpp"
#include "syntax/tree.hpp"

namespace maslin::language {

struct Resolved {
  Program program;
  Names names;
};

// The standard library from its own trees: the base of every program.
Resolved resolve_library(const Sources& sources, const std::deque<syntax::SyntaxTree>& library,
                         Diagnostics& diagnostics);

// The user's trees on top of the library. What could not be understood is reported and left out,
// or marks its framework, basket or kitchen as poisoned, so that later stages stay quiet about it.
void resolve(const Sources& sources, const std::deque<syntax::SyntaxTree>& user, Resolved& library,
             Diagnostics& diagnostics);

}  // namespace maslin::language
