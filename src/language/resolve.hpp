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

// The library's trees first. What could not be understood is reported and left out, or marks its
// framework, basket or kitchen as poisoned, so that later stages stay quiet about it.
Resolved resolve(const Sources& sources, const std::deque<syntax::SyntaxTree>& library,
                 const std::deque<syntax::SyntaxTree>& user, Diagnostics& diagnostics);

}  // namespace maslin::language
