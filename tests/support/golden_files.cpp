// SPDX-License-Identifier: Apache-2.0
#include "support/golden_files.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <utility>

#include "driver/session.hpp"
#include "support/mending.hpp"

namespace maslin::test {
namespace {

// Where the texts are said to be; nothing there is ever read.
constexpr std::string_view folder = "/kitchen/";

// How often a code is reported of these very words: another place may show up once one is mended.
std::size_t count_of(const Session& session, const Diagnostic& wanted, std::string_view words) {
  const auto& all = session.diagnostics().all();
  return static_cast<std::size_t>(std::count_if(all.begin(), all.end(), [&](const auto& each) {
    return each.code == wanted.code && each.primary &&
           session.sources().text(each.primary->span) == words;
  }));
}

void read_all(Session& session, const std::vector<std::string>& roots) {
  for (const std::string& root : roots) session.load(root);
  session.compile();
}

}  // namespace

MemoryFiles::MemoryFiles(const Texts& texts) {
  for (const auto& [name, text] : texts) texts_[canonical(name)] = text;
}

Result<std::string, ReadError> MemoryFiles::read(const std::string& path, std::size_t most) {
  const auto found = texts_.find(canonical(path));
  if (found == texts_.end()) return Failure{ReadError{ReadError::Kind::missing, {}}};
  if (found->second.size() > most) return Failure{ReadError{ReadError::Kind::too_large, {}}};
  return found->second;
}

std::optional<ReadError> MemoryFiles::write_new(const std::string& path, const std::string& text) {
  if (!texts_.emplace(canonical(path), text).second) return ReadError{ReadError::Kind::exists, {}};
  return std::nullopt;
}

std::string MemoryFiles::canonical(const std::string& path) {
  return (std::filesystem::path(folder) / path).lexically_normal().string();
}

std::vector<Diagnostic> diagnostics_of(const Texts& texts, const std::vector<std::string>& roots) {
  MemoryFiles files(texts);
  Session session(files);
  read_all(session, roots);
  session.diagnostics().sort();
  return session.diagnostics().all();
}

std::string failing_fixes(const Texts& texts, const std::vector<std::string>& roots) {
  MemoryFiles files(texts);
  Session session(files);
  read_all(session, roots);
  const std::vector<Diagnostic>& all = session.diagnostics().all();
  std::string failing;
  for (const Diagnostic& each : all) {
    for (const Fix& fix : each.fixes) {
      if (fix.kind != Fix::Kind::safe) continue;
      Texts mended = texts;
      for (const auto& [name, text] : texts) {
        std::vector<Edit> edits;
        for (const Edit& edit : fix.edits) {
          if (session.sources().file(edit.span.file).name() == name) edits.push_back(edit);
        }
        mended[name] = edited(text, edits);
      }
      MemoryFiles mended_files(mended);
      Session again(mended_files);
      read_all(again, roots);
      const std::string words(session.sources().text(each.primary->span));
      if (count_of(again, each, words) < count_of(session, each, words)) continue;
      failing += fmt::format("[{}] {}: {} does not mend it\n", name_of(each.code), each.message,
                             fix.title);
    }
  }
  return failing;
}

}  // namespace maslin::test
