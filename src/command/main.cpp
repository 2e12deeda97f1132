// SPDX-License-Identifier: Apache-2.0
#include <unistd.h>

#include <cstdlib>
#include <iostream>

#include "command/command.hpp"

namespace {

bool wants_color() {
  const char* no_color = std::getenv("NO_COLOR");
  if (no_color != nullptr && *no_color != '\0') return false;
  return isatty(STDERR_FILENO) != 0;
}

}  // namespace

int main(int argc, char** argv) {
  std::ios::sync_with_stdio(false);
  maslin::DiskFiles files;
  const maslin::command::Streams streams{std::cin, std::cout, std::cerr, wants_color()};
  const int code = maslin::command::run(argc, argv, files, streams);
  std::cout.flush();
  // A full disk or a closed pipe is a failure, not a success with half a sheet.
  if (!std::cout) return maslin::command::system_failed;
  return code;
}
