// SPDX-License-Identifier: Apache-2.0
#pragma once

#include "command/command.hpp"
#include "plan/make.hpp"

namespace maslin::command {

// Writes each text that the mend changes beside the old one (`week.maslin` becomes
// `week.mended.maslin`), and says so. Nothing that is there is written over.
int write_mended(const Session& session, const std::vector<plan::Mend>& mends, Files& files,
                 const Streams& streams);

}  // namespace maslin::command
