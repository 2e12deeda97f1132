// SPDX-License-Identifier: Apache-2.0
#include "plan/draft.hpp"

namespace maslin::plan {

Tools tools_of(const language::Program& program, language::KitchenId kitchen) {
  Tools tools;
  // Kitchen scales commonly show single grams (common practice, no source).
  tools.scale_step = 1;
  tools.assumed = true;
  if (!kitchen.valid()) return tools;
  const language::Kitchen& found = program[kitchen];
  if (found.scale_step) {
    tools.scale_step = found.scale_step->in_base();
    tools.assumed = false;
  }
  if (found.scale_limit) tools.scale_limit = found.scale_limit->in_base();
  if (found.spoon_step) tools.spoon_step = found.spoon_step->in_base();
  return tools;
}

}  // namespace maslin::plan
