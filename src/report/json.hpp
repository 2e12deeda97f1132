// SPDX-License-Identifier: Apache-2.0
// What all JSON of ours has in common.
#pragma once

#include <nlohmann/json_fwd.hpp>

#include <string>
#include <string_view>
#include <vector>

#include "blend/ground.hpp"
#include "language/program.hpp"
#include "plan/draft.hpp"
#include "source/source.hpp"

namespace maslin::report {

// A decimal to nine places, which is exact for whatever was written or weighed; a whole number
// without a point.
nlohmann::ordered_json number_json(const Rational& value);
// {"low", "high"}.
nlohmann::ordered_json range_json(const Bounds& bounds);
// For people, each as it may be shown.
nlohmann::ordered_json texts_json(const std::vector<std::string>& texts);
// Grams of acetic acid in 100 ml, as on a bottle.
nlohmann::ordered_json acidity_json(const Rational& grams_per_millilitre);

// What stands in the text, on one line.
std::string text_at(const Sources& sources, Span span);

std::string_view origin_name(language::Origin origin);
std::string_view statement_name(blend::StatementKind kind);

// Which framework, basket and kitchen, and what was asked for.
nlohmann::ordered_json task_json(const Sources& sources, const language::Program& program,
                                 const plan::Task& task);

}  // namespace maslin::report
