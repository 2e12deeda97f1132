// SPDX-License-Identifier: Apache-2.0
// A golden case: one file that holds the inputs, the command and everything it is to print.
//
//   What the case is about, in a line or two.
//   --- input week.maslin        a file; several may stand here
//   --- bytes photo.maslin       a file that is no text, in hexadecimal
//   --- folder sub               an empty folder
//   --- stdin                    what stands on standard input
//   --- command                  the words behind `maslin`
//   --- stdout                   what is printed; left out where that is nothing
//   --- stderr
//   --- exit                     left out where it is 0
#pragma once

#include <string>
#include <vector>

namespace maslin::test {

struct Split {
  std::string kind;
  std::string name;  // of an input
  std::string content;
};

struct GoldenCase {
  std::string about;
  std::vector<Split> splits;

  std::string content_of(const std::string& kind) const;  // empty where there is none
  void replace(const std::string& kind, const std::string& content);
};

GoldenCase read_case(const std::string& text);
std::string write_case(const GoldenCase& golden);

// The words of a command line; those in double quotes are one.
std::vector<std::string> words_of(const std::string& command);

struct Ran {
  std::string out;
  std::string err;
  int exit = 0;
};

// Puts the inputs of a case into a new folder and runs the program there.
Ran run_case(const GoldenCase& golden);

}  // namespace maslin::test
