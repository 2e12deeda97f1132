// SPDX-License-Identifier: Apache-2.0
// What is read of a batch: by a route that asks for it, and in a batch that was made.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

#include "language/context.hpp"
#include "language/values.hpp"

namespace maslin::language {

enum class Scale : std::uint8_t { own, percent, none };  // none: it is only looked at

struct Readable {
  std::string_view name;
  Dimension dimension;
  Scale scale = Scale::own;
  bool by_routes = true;           // whether a route may ask for it
  std::optional<Rational> most{};  // what it cannot be above; it is never below nothing
};

// Nothing after a report.
const Readable* read_readable(Context& context, syntax::View figure, bool by_routes);

// A figure that was read, in base units; nothing after a report.
std::optional<Rational> read_figure_of(Context& context, const Readable& what,
                                       syntax::View measure);

}  // namespace maslin::language
