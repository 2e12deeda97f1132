// SPDX-License-Identifier: Apache-2.0
// Whether a framework still is what its source tested, as far as its text says; and the tables of
// minutes that belong to tested recipes alone.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "language/program.hpp"

namespace maslin::language {

// Why something is not, or not any more, what was tested: a clause, "`salt` is stated as a range".
struct Lapse {
  std::string because;
  Span span;
  std::string mend = {};  // may be empty
};

// None: by its text it is what its source tested. A source states one amount of one thing each, so
// ranges and classes are not it (a class of vinegars is, since its strength is stated), nor is what
// refines it or is made to another taste. Where it claims the minutes of a table, its amounts are
// held against the recipe that the table was made with.
std::vector<Lapse> lapses_of(const Program& program, const Framework& framework);

// The claim that names a tested process; none where no route is claimed with one.
const RouteClaim* claimed_process(const Framework& framework);

// The rows for a product, the smallest jar first.
std::vector<const Process*> rows_for(const Route& route, const std::string& product);
// The row of the smallest size in the table that holds as much as this jar; none where it is larger
// than all of them.
const Process* row_for(const Route& route, const std::string& product, Volume jar);
// The minutes of the band this altitude lies in, each band up to and including its upper end; none
// above the last. Nothing is read between bands.
std::optional<Duration> time_at(const Process& row, Length altitude);

}  // namespace maslin::language
