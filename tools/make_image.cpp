// SPDX-License-Identifier: Apache-2.0
// Run by the build: resolves the standard library and writes it as a C++ source.
#include <cstdio>
#include <fstream>
#include <iostream>

#include "base/embedded.hpp"
#include "diagnostic/render.hpp"
#include "driver/session.hpp"
#include "language/checks/checks.hpp"
#include "language/image.hpp"

std::string_view maslin::embedded::library_image() { return {}; }

namespace {

bool write_source(const char* path, const std::string& bytes) {
  std::ofstream out(path);
  out << "// Made by the build; edit stdlib/ instead.\n#include \"base/embedded.hpp\"\n\n"
         "namespace maslin::embedded {\nnamespace {\nalignas(16) const unsigned char image[] = {";
  for (const char byte : bytes) out << static_cast<int>(static_cast<unsigned char>(byte)) << ',';
  out << "0};\n}  // namespace\n\nstd::string_view library_image() {\n"
         "  return {reinterpret_cast<const char*>(image), "
      << bytes.size() << "};\n}\n}  // namespace maslin::embedded\n";
  return static_cast<bool>(out.flush());
}

}  // namespace

int main(int argc, char** argv) {
  if (argc != 2) return 2;
  maslin::Sources sources;
  for (const maslin::embedded::File& file : maslin::embedded::standard_library()) {
    sources.add(maslin::SourceFile::borrowed("<std>/" + std::string(file.path), file.text));
  }
  maslin::Diagnostics diagnostics;
  auto library = maslin::read_library(sources, diagnostics);
  // The library's own frameworks are checked as if they were somebody's.
  library.program.library_frameworks = 0;
  maslin::language::run_checks(library.program, diagnostics);
  library.program.library_frameworks = library.program.frameworks.size();
  for (const maslin::Diagnostic& each : diagnostics.all()) {
    std::cerr << maslin::render_text(sources, each);
  }
  if (!diagnostics.all().empty()) return 1;
  return write_source(argv[1], maslin::language::encode(library)) ? 0 : 3;
}
