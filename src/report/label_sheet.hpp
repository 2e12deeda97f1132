// SPDX-License-Identifier: Apache-2.0
// The lines of a label and of the card for the stall, in the order in which every output has them.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "label/label.hpp"

namespace maslin::report {

// A line: its words, some of them emphasised.
using LabelLine = label::Phrase;

// What every jar bears, whatever its lot: name, ingredients, quantities, keeping.
std::string label_title(const label::Label& label);
LabelLine ingredient_line(const label::Label& label);
std::vector<std::string> keeping_lines(const label::Label& label);
// "net 301 g"; where the law asks it "net 10.6 oz (301 g)"; a blank where it is not known.
std::string net_text(const label::Label& label, const std::optional<Mass>& net);
// "6 jars of 282 ml: net 301 g".
std::vector<std::string> net_lines(const label::Label& label, const label::Lots& lots);
// "batch 2026-10-10 a, boil 1: by what was used"; empty for a plan.
std::string record_line(const label::Label& label);
std::string law_line(const label::Label& label);
std::string nutrition_title(const label::Label& label);

// "celery: in celery seed"; a blank where something that is used does not state its allergens.
// Never that there is none of it.
LabelLine card_line(const label::Label& label, const label::CardRow& row);
std::vector<std::string> card_notes(const label::Label& label);

}  // namespace maslin::report
