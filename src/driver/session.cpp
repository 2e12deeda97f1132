// SPDX-License-Identifier: Apache-2.0
#include "driver/session.hpp"

#include <fmt/format.h>

#include <filesystem>
#include <optional>

#include "base/embedded.hpp"
#include "base/utf8.hpp"
#include "language/checks/checks.hpp"
#include "language/image.hpp"
#include "syntax/parse.hpp"
#include "syntax/problems.hpp"

namespace maslin {
namespace {

constexpr std::size_t largest_file = std::size_t{64} << 20;
constexpr std::size_t most_files = 1000;

std::string parent_of(const std::string& path) {
  return std::filesystem::path(path).parent_path().string();
}

bool is_inside(const std::string& path, const std::string& folder) {
  const std::filesystem::path relative = std::filesystem::path(path).lexically_relative(folder);
  return !relative.empty() && *relative.begin() != "..";
}

// Where a text stops being text: bytes that are no UTF-8, or control characters.
struct NotText {
  std::uint32_t offset;
  std::string what;
  std::string mend = "save it as plain text in UTF-8";
};

bool is_hidden(std::int32_t c) {
  const bool direction = (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
  return direction || c == 0x200B || c == 0x2028 || c == 0x2029;
}

std::optional<NotText> find_not_text(std::string_view text) {
  for (std::size_t i = 0; i < text.size();) {
    const auto first = static_cast<unsigned char>(text[i]);
    if (first >= 0x20 && first < 0x7f) {
      ++i;
      continue;
    }
    const auto offset = static_cast<std::uint32_t>(i);
    if (first < 0x80) {
      const bool line_end =
          first == '\n' || (first == '\r' && i + 1 < text.size() && text[i + 1] == '\n');
      if (first != '\t' && !line_end) {
        if (first == '\r') {
          return NotText{offset, "half of a line end", "save it with the line ends of this system"};
        }
        return NotText{offset, fmt::format("the control character {}", static_cast<int>(first))};
      }
      ++i;
      continue;
    }
    const Character each = character_at(text, i);
    if (!each.is_valid()) return NotText{offset, "a byte that is no UTF-8"};
    if (is_hidden(each.code_point) || each.code_point < 0xA0) {
      return NotText{offset, fmt::format("the invisible character U+{:04X}", each.code_point),
                     "delete it; it may have come with text copied from elsewhere"};
    }
    i += each.bytes;
  }
  return std::nullopt;
}

std::string reason_for(const ReadError& error) {
  switch (error.kind) {
    case ReadError::Kind::missing:
      return "there is no such file";
    case ReadError::Kind::folder:
      return "it is a folder, not a file";
    case ReadError::Kind::denied:
      return "it may not be read";
    case ReadError::Kind::too_large:
      return "it is larger than 64 MiB";
    case ReadError::Kind::exists:
    case ReadError::Kind::failed:
      break;
  }
  return error.reason;
}

std::string mend_for(const ReadError& error) {
  switch (error.kind) {
    case ReadError::Kind::missing:
      return "look at its name, and at the folder it is in";
    case ReadError::Kind::folder:
      return "name the files in it";
    case ReadError::Kind::too_large:
      return "name a file of maslin text";
    default:
      return "see that it may be read";
  }
}

}  // namespace

language::Resolved read_library(const Sources& sources, Diagnostics& diagnostics) {
  std::deque<syntax::SyntaxTree> trees;
  for (std::size_t i = 0; i < sources.size(); ++i) {
    const FileId id(i);
    trees.push_back(syntax::parse(id, sources.file(id).text()));
    syntax::report_problems(trees.back(), diagnostics);
  }
  return language::resolve_library(sources, trees, diagnostics);
}

Session::Session(Files& files) : files_(files) { load_library(); }

void Session::load_library() {
  for (const embedded::File& file : embedded::standard_library()) {
    sources_.add(SourceFile::borrowed("<std>/" + std::string(file.path), file.text));
  }
  if (auto image = language::decode(embedded::library_image())) {
    resolved_ = std::move(*image);
  } else {
    resolved_ = read_library(sources_, diagnostics_);
  }
}

void Session::allow_folder(const std::string& folder) {
  folders_.push_back(files_.canonical(folder));
}

bool Session::load(const std::string& path) {
  const std::string canonical = files_.canonical(path);
  return load_file(canonical, path, nullptr, parent_of(canonical));
}

void Session::load_text(const std::string& name, std::string text) {
  const std::string path = files_.canonical(name);
  take_text(name, std::move(text), path, parent_of(path));
}

bool Session::load_file(const std::string& path, const std::string& shown, const Span* user,
                        const std::string& root_folder) {
  const auto known = seen_.find(path);
  if (known != seen_.end()) {
    if (known->second == State::loading && user != nullptr) {
      diagnostics_
          .report(Code::use_cycle, *user,
                  "this file is being read already: files use one another in a circle")
          .with_mend("put what both need into a third file");
    }
    return true;
  }
  seen_[path] = State::loading;
  auto text = files_.read(path, largest_file);
  if (!text) {
    const bool large = text.error().kind == ReadError::Kind::too_large;
    const Code code = large ? Code::file_too_large : Code::unreadable_file;
    const std::string message =
        fmt::format("`{}` cannot be read: {}", shown, reason_for(text.error()));
    auto& found = user != nullptr ? diagnostics_.report(code, *user, message)
                                  : diagnostics_.report_without_place(code, message);
    found.with_mend(mend_for(text.error()));
    seen_[path] = State::loaded;
    return false;
  }
  take_text(shown, std::move(text.value()), path, root_folder);
  seen_[path] = State::loaded;
  return true;
}

void Session::take_text(const std::string& shown, std::string text, const std::string& path,
                        const std::string& root_folder) {
  const FileId id = sources_.add(SourceFile(shown, std::move(text)));
  if (!check_text(id)) return;
  trees_.push_back(syntax::parse(id, sources_.file(id).text()));
  const syntax::SyntaxTree& tree = trees_.back();
  syntax::report_problems(tree, diagnostics_);
  bool holds_something = false;
  for (const syntax::View item : syntax::root(tree)) {
    const auto kind = item.kind();
    holds_something = holds_something ||
                      (kind != syntax::Kind::space && kind != syntax::Kind::newline &&
                       kind != syntax::Kind::comment && kind != syntax::Kind::documentation &&
                       kind != syntax::Kind::semicolon && kind != syntax::Kind::byte_order_mark);
  }
  if (!holds_something) {
    diagnostics_
        .report(Code::empty_file, {id, 0, 0},
                fmt::format("nothing is written in `{}`, apart from comments", shown))
        .with_mend("write a framework, a basket or a kitchen: `basket { onion 2 kg gross }`");
  }
  follow_uses(tree, path, root_folder);
}

bool Session::check_text(FileId file) {
  const auto wrong = find_not_text(sources_.file(file).text());
  if (!wrong) return true;
  diagnostics_
      .report(Code::not_text, {file, wrong->offset, wrong->offset + 1},
              fmt::format("`{}` is not plain text: here stands {}", sources_.file(file).name(),
                          wrong->what))
      .with_mend(wrong->mend);
  return false;
}

void Session::follow_uses(const syntax::SyntaxTree& tree, const std::string& path,
                          const std::string& root_folder) {
  for (const syntax::View item : syntax::root(tree)) {
    if (!item.is(syntax::Kind::use)) continue;
    const syntax::View text = language::text_child(item);
    const std::string wanted = language::text_of(text);
    const Span span = text.span();
    const std::filesystem::path target = std::filesystem::path(parent_of(path)) / wanted;
    const std::string canonical = files_.canonical(target.string());
    if (wanted.empty() || std::filesystem::path(wanted).is_absolute() ||
        !is_allowed(canonical, root_folder)) {
      diagnostics_
          .report(Code::use_outside, span,
                  fmt::format("`{}` lies outside the folder of the first file", wanted))
          .with_why("a framework from somebody else must not be able to read other files")
          .with_mend("move it inside, or name its folder with --library");
      continue;
    }
    if (seen_.size() >= most_files) {
      diagnostics_.report(Code::use_outside, span, "more than 1000 files are used");
      return;
    }
    const std::string shown =
        (std::filesystem::path(parent_of(sources_.file(tree.file).name())) / wanted)
            .lexically_normal()
            .string();
    load_file(canonical, shown, &span, root_folder);
  }
}

bool Session::is_allowed(const std::string& path, const std::string& root_folder) const {
  if (is_inside(path, root_folder)) return true;
  for (const std::string& folder : folders_) {
    if (is_inside(path, folder)) return true;
  }
  return false;
}

void Session::compile() {
  language::resolve(sources_, trees_, resolved_, diagnostics_);
  language::run_checks(resolved_.program, diagnostics_);
}

}  // namespace maslin
