// SPDX-License-Identifier: Apache-2.0
#include "diagnostic/render.hpp"

#include <fmt/format.h>
#include <utf8proc.h>

#include <algorithm>
#include <utility>

namespace maslin {
namespace {

constexpr std::size_t widest_line = 100;  // columns of a source line that are shown

// Columns a text takes on a terminal.
std::size_t width_of(std::string_view text) {
  std::size_t width = 0;
  for (std::size_t i = 0; i < text.size();) {
    utf8proc_int32_t code_point = 0;
    const auto length =
        utf8proc_iterate(reinterpret_cast<const utf8proc_uint8_t*>(text.data()) + i,
                         static_cast<utf8proc_ssize_t>(text.size() - i), &code_point);
    if (length <= 0) {
      ++width;
      ++i;
      continue;
    }
    width += static_cast<std::size_t>(std::max(0, utf8proc_charwidth(code_point)));
    i += static_cast<std::size_t>(length);
  }
  return width;
}

std::size_t back_to_character(std::string_view text, std::size_t at) {
  while (at > 0 && at < text.size() && (static_cast<unsigned char>(text[at]) & 0xc0) == 0x80) --at;
  return at;
}

// A very long line is cut around the place that matters.
struct Excerpt {
  std::string text;
  std::size_t caret_column = 0;
  std::size_t caret_width = 1;
};

Excerpt excerpt(std::string_view line, std::size_t begin, std::size_t end) {
  std::size_t from = 0;
  std::size_t to = line.size();
  if (line.size() > widest_line) {
    from = begin > widest_line / 2 ? back_to_character(line, begin - widest_line / 2) : 0;
    to = std::min(line.size(), back_to_character(line, std::min(line.size(), from + widest_line)));
  }
  end = std::clamp(end, begin, to);
  const auto shown = [&](std::size_t a, std::size_t b) {
    return printable(line.substr(a, b > a ? b - a : 0));
  };
  Excerpt result;
  const std::string left_cut = from > 0 ? "…" : "";
  result.text = left_cut + shown(from, to) + (to < line.size() ? "…" : "");
  result.caret_column = (left_cut.empty() ? 0 : 1) + width_of(shown(from, begin));
  result.caret_width = std::max<std::size_t>(1, width_of(shown(begin, end)));
  return result;
}

class Renderer {
 public:
  Renderer(const Sources& sources, const Diagnostic& diagnostic, const TextStyle& style)
      : sources_(sources), diagnostic_(diagnostic), style_(style) {}

  std::string run() {
    head();
    if (diagnostic_.primary) show(*diagnostic_.primary, false);
    for (const Label& label : diagnostic_.because) show(label, true);
    if (!diagnostic_.why.empty()) line("why", diagnostic_.why);
    for (const std::string& mend : diagnostic_.mends) line("mend", mend);
    for (const Fix& fix : diagnostic_.fixes) {
      if (!already_said(fix)) line("mend", fix.title);
    }
    out_ += fmt::format("  maslin explain {}\n", name_of(diagnostic_.code));
    return std::move(out_);
  }

 private:
  std::string strong(const std::string& text) const {
    return style_.color ? "\x1b[1m" + text + "\x1b[0m" : text;
  }

  std::string place(Span span) const {
    const SourceFile& file = sources_.file(span.file);
    const Position position = file.position(span.begin);
    return fmt::format("{}:{}:{}", printable(file.name()), position.line, position.column);
  }

  void head() {
    const bool error = severity_of(diagnostic_.code) == Severity::error;
    if (diagnostic_.primary) out_ += place(diagnostic_.primary->span) + ": ";
    out_ +=
        strong(fmt::format("{}: {}", error ? "error" : "warning", printable(diagnostic_.message)));
    out_ += fmt::format(" [{}]\n", name_of(diagnostic_.code));
  }

  void show(const Label& label, bool with_place) {
    const SourceFile& file = sources_.file(label.span.file);
    const Position position = file.position(label.span.begin);
    const std::string_view text = file.line(position.line);
    const std::size_t line_begin = file.line_begin(position.line);
    const std::size_t begin = std::min<std::size_t>(label.span.begin - line_begin, text.size());
    const std::size_t end = std::min<std::size_t>(label.span.end - line_begin, text.size());
    const Excerpt shown = excerpt(text, begin, end);
    if (with_place) out_ += fmt::format("  {}\n", place(label.span));
    out_ += fmt::format("{:>5} | {}\n", position.line, shown.text);
    out_ += fmt::format("      | {}{}", std::string(shown.caret_column, ' '),
                        std::string(shown.caret_width, '^'));
    out_ += label.text.empty() ? "\n" : " " + printable(label.text) + "\n";
  }

  void line(std::string_view head, std::string_view text) {
    out_ += fmt::format("  {}: {}\n", head, printable(text));
  }

  static std::string without_blanks(const std::string& text) {
    const std::size_t begin = text.find_first_not_of(" ,");
    if (begin == std::string::npos) return {};
    return text.substr(begin, text.find_last_not_of(' ') - begin + 1);
  }

  bool already_said(const Fix& fix) const {
    for (const std::string& mend : diagnostic_.mends) {
      if (mend == fix.title) return true;
      for (const Edit& edit : fix.edits) {
        const std::string plain = without_blanks(edit.text);
        if (!plain.empty() && mend.find("`" + plain + "`") != std::string::npos) return true;
      }
    }
    return false;
  }

  const Sources& sources_;
  const Diagnostic& diagnostic_;
  TextStyle style_;
  std::string out_;
};

}  // namespace

std::string render_text(const Sources& sources, const Diagnostic& diagnostic,
                        const TextStyle& style) {
  return Renderer(sources, diagnostic, style).run();
}

std::string printable(std::string_view text) {
  std::string result;
  result.reserve(text.size());
  for (std::size_t i = 0; i < text.size();) {
    utf8proc_int32_t code_point = 0;
    const auto length =
        utf8proc_iterate(reinterpret_cast<const utf8proc_uint8_t*>(text.data()) + i,
                         static_cast<utf8proc_ssize_t>(text.size() - i), &code_point);
    if (length <= 0) {
      result += "�";
      ++i;
      continue;
    }
    const bool direction = (code_point >= 0x202A && code_point <= 0x202E) ||
                           (code_point >= 0x2066 && code_point <= 0x2069);
    const bool unseen = code_point == 0x200B || code_point == 0x2028 || code_point == 0x2029;
    if (code_point == '\t') {
      result += ' ';
    } else if (code_point < 0x20 || (code_point >= 0x7f && code_point < 0xA0) || direction ||
               unseen) {
      result += "�";
    } else {
      result += text.substr(i, static_cast<std::size_t>(length));
    }
    i += static_cast<std::size_t>(length);
  }
  return result;
}

}  // namespace maslin
