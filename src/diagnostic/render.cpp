// SPDX-License-Identifier: Apache-2.0
#include "diagnostic/render.hpp"

#include <fmt/format.h>

#include <algorithm>
#include <utility>

#include "base/utf8.hpp"

namespace maslin {
namespace {

constexpr std::size_t widest_line = 100;  // columns of a source line that are shown
constexpr std::size_t longest_text =
    2000;  // bytes of a message, which may quote a text of any size

std::size_t back_to_character(std::string_view text, std::size_t at) {
  while (at > 0 && at < text.size() && (static_cast<unsigned char>(text[at]) & 0xc0) == 0x80) --at;
  return at;
}

std::string readable(std::string_view text) {
  if (text.size() <= longest_text) return printable(text);
  return printable(text.substr(0, back_to_character(text, longest_text))) + "…";
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
        strong(fmt::format("{}: {}", error ? "error" : "warning", readable(diagnostic_.message)));
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
    out_ += label.text.empty() ? "\n" : " " + readable(label.text) + "\n";
  }

  void line(std::string_view head, std::string_view text) {
    out_ += fmt::format("  {}: {}\n", head, readable(text));
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
    const Character each = character_at(text, i);
    const std::int32_t c = each.code_point;
    const bool direction = (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
    const bool unseen = c == 0x200B || c == 0x2028 || c == 0x2029;
    if (c == '\t') {
      result += ' ';
    } else if (c < 0x20 || (c >= 0x7f && c < 0xA0) || direction || unseen) {
      result += "�";
    } else {
      result += text.substr(i, each.bytes);
    }
    i += each.bytes;
  }
  return result;
}

}  // namespace maslin
