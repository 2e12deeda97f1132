// SPDX-License-Identifier: Apache-2.0
#include "command/mended.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <filesystem>
#include <map>
#include <nlohmann/json.hpp>
#include <ostream>

#include "command/envelope.hpp"
#include "diagnostic/render.hpp"

namespace maslin::command {
namespace {

// Edits of one file, from its end to its start, so that no place moves before it is used.
std::string edited(std::string text, std::vector<Edit> edits) {
  std::stable_sort(edits.begin(), edits.end(),
                   [](const Edit& a, const Edit& b) { return a.span.begin > b.span.begin; });
  for (const Edit& edit : edits) {
    text.replace(edit.span.begin, edit.span.end - edit.span.begin, edit.text);
  }
  return text;
}

std::string name_beside(const std::string& path, int number) {
  const std::filesystem::path whole(path);
  const std::string count = number == 1 ? "" : "-" + std::to_string(number);
  return (whole.parent_path() /
          (whole.stem().string() + ".mended" + count + whole.extension().string()))
      .string();
}

// What came of mending, for the envelope or for a person.
struct Written {
  std::vector<std::string> files;
  std::vector<std::string> texts;  // of what has no place to be written to
  std::string failed;
};

void write_one(const std::string& path, const std::string& text, Files& files, Written& written) {
  constexpr int most = 100;
  for (int number = 1; number <= most; ++number) {
    const std::string beside = name_beside(path, number);
    const auto failed = files.write_new(beside, text);
    if (!failed) {
      written.files.push_back(beside);
      return;
    }
    if (failed->kind == ReadError::Kind::exists) continue;
    written.failed = fmt::format("{} cannot be written: {}", beside, failed->reason);
    return;
  }
  written.failed = fmt::format("there are {} mended texts beside {} already", most, path);
}

Written write_all(const Session& session, const plan::Mend& mend, Files& files) {
  Written written;
  std::map<std::uint32_t, std::vector<Edit>> by_file;
  for (const Edit& edit : mend.edits) by_file[edit.span.file.index].push_back(edit);
  for (const auto& [index, edits] : by_file) {
    const SourceFile& file = session.sources().file(FileId(index));
    std::string text = edited(std::string(file.text()), edits);
    // Standard input has no place beside it.
    if (file.name().front() == '<') {
      written.texts.push_back(std::move(text));
    } else {
      write_one(file.name(), text, files, written);
    }
    if (!written.failed.empty()) break;
  }
  return written;
}

void tell(const std::string& title, const Written& written, const Streams& streams) {
  if (streams.envelope != nullptr) {
    nlohmann::ordered_json json = {
        {"title", title}, {"files", written.files}, {"texts", written.texts}};
    if (!written.failed.empty()) json["failed"] = printable(written.failed);
    streams.envelope->set_result("mended", std::move(json));
    return;
  }
  streams.err << fmt::format("mended: {}\n", printable(title));
  for (const std::string& text : written.texts) streams.out << text;
  for (const std::string& file : written.files) {
    streams.err << fmt::format("the mended text is in {}\n", printable(file));
  }
  if (!written.failed.empty()) streams.err << printable(written.failed) << '\n';
}

}  // namespace

int write_mended(const Session& session, const std::vector<plan::Mend>& mends, Files& files,
                 const Streams& streams) {
  const auto mend = std::find_if(mends.begin(), mends.end(),
                                 [](const plan::Mend& each) { return !each.edits.empty(); });
  if (mend == mends.end()) {
    if (streams.envelope == nullptr) streams.err << "there is no mend that changes the basket\n";
    return findings;
  }
  const Written written = write_all(session, *mend, files);
  tell(mend->text, written, streams);
  return written.failed.empty() ? findings : system_failed;
}

}  // namespace maslin::command
