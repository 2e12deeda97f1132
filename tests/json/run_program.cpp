// SPDX-License-Identifier: Apache-2.0
#include "json/run_program.hpp"

#include <sys/wait.h>
#include <unistd.h>

#include <cstdlib>
#include <fstream>
#include <sstream>

namespace maslin::json_test {
namespace {

std::string quoted(const std::string& word) {
  std::string result = "'";
  for (const char c : word) {
    if (c == '\'') {
      result += "'\\''";
    } else {
      result += c;
    }
  }
  return result + "'";
}

std::string content(const std::filesystem::path& path) {
  std::ifstream in(path, std::ios::binary);
  std::ostringstream text;
  text << in.rdbuf();
  return text.str();
}

}  // namespace

Folder::Folder() {
  std::string form = (std::filesystem::temp_directory_path() / "maslin_json.XXXXXX").string();
  if (mkdtemp(form.data()) != nullptr) path_ = form;
}

Folder::~Folder() {
  std::error_code ignored;
  if (!path_.empty()) std::filesystem::remove_all(path_, ignored);
}

void Folder::write(const std::string& name, const std::string& text) const {
  std::ofstream(path_ / name, std::ios::binary) << text;
}

std::string Folder::read(const std::string& name) const { return content(path_ / name); }

Ran Folder::maslin(const std::vector<std::string>& arguments, const std::string& input) const {
  return run(MASLIN_PROGRAM, arguments, input);
}

Ran Folder::run(const std::string& program, const std::vector<std::string>& arguments,
                const std::string& input) const {
  write(".in", input);
  std::string command = "cd " + quoted(path_.string()) + " && " + quoted(program);
  for (const std::string& argument : arguments) command += " " + quoted(argument);
  command += " <.in >.out 2>.err";
  const int status = std::system(command.c_str());
  return {WIFEXITED(status) ? WEXITSTATUS(status) : -1, read(".out"), read(".err")};
}

const std::string small_framework = R"(framework first chutney {
  basis prepared produce
  produce      { onion 15 .. 25 %; fruit 50 .. 70 %; root 0 .. 25 % }
  per kilogram { vinegar 450 ml; sugar 250 .. 300 g; dried fruit 50 .. 80 g; salt 10 g; whole clove 2 }
  substitute   { dried fruit for sugar by sugars full up to 50 % }
  limits       { low acid <= 50 % of prepared produce; soluble solids 35 .. 45 % }
}
)";

const std::string small_basket = R"(basket "Tuesday" {
  apple     2.5 kg gross, from "the orchard"
  onion     800 g prepared, use first
  beetroot  600 g gross, trim 20 %
  raisin    to buy, at 4 per kg, packs of 250 g
}
)";

}  // namespace maslin::json_test
