// SPDX-License-Identifier: Apache-2.0
#include "syntax/tree.hpp"

namespace maslin::syntax {
namespace {

constexpr std::string_view names[] = {
#define MASLIN_NODE(name) #name,
#include "syntax/node_kinds.def"
#undef MASLIN_NODE
};

}  // namespace

std::string_view name_of(Kind kind) { return names[static_cast<std::size_t>(kind)]; }

View View::child(Kind kind) const {
  for (const View view : *this) {
    if (view.kind() == kind) return view;
  }
  return {};
}

bool View::has_keyword(std::string_view text) const {
  for (const View view : *this) {
    if (view.kind() == Kind::keyword && view.text() == text) return true;
  }
  return false;
}

}  // namespace maslin::syntax
