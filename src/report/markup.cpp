// SPDX-License-Identifier: Apache-2.0
#include "report/markup.hpp"

#include <fmt/format.h>
#include <utf8proc.h>

#include "base/embedded.hpp"
#include "diagnostic/render.hpp"

namespace maslin::report {
namespace {

// Code points that no HTML may hold, and marks that turn the direction of what follows.
bool is_barred(utf8proc_int32_t code_point) {
  const bool noncharacter =
      (code_point & 0xFFFE) == 0xFFFE || (code_point >= 0xFDD0 && code_point <= 0xFDEF);
  return noncharacter || code_point == 0x200E || code_point == 0x200F || code_point == 0x061C;
}

std::string_view reference_for(char c) {
  switch (c) {
    case '&':
      return "&amp;";
    case '<':
      return "&lt;";
    case '>':
      return "&gt;";
    case '"':
      return "&quot;";
    default:
      return {};
  }
}

std::string number_text(double value) {
  std::string text = fmt::format("{:.2f}", value);
  text.erase(text.find_last_not_of('0') + 1);
  if (text.back() == '.') text.pop_back();
  return text == "-0" ? "0" : text;
}

}  // namespace

std::string escape_markup(std::string_view raw) {
  const std::string text = printable(raw);
  std::string result;
  result.reserve(text.size());
  for (std::size_t i = 0; i < text.size();) {
    utf8proc_int32_t code_point = 0;
    const auto length =
        utf8proc_iterate(reinterpret_cast<const utf8proc_uint8_t*>(text.data()) + i,
                         static_cast<utf8proc_ssize_t>(text.size() - i), &code_point);
    const std::size_t bytes = length > 0 ? static_cast<std::size_t>(length) : 1;
    const std::string_view reference = reference_for(text[i]);
    if (is_barred(code_point)) {
      result += "�";
    } else {
      result += reference.empty() ? std::string_view(text).substr(i, bytes) : reference;
    }
    i += bytes;
  }
  return result;
}

Element& Element::with(MarkupName attribute, std::string_view value) {
  attributes_ += fmt::format(" {}=\"{}\"", attribute.text(), escape_markup(value));
  return *this;
}

Element& Element::with(MarkupName attribute, double value) {
  return with(attribute, number_text(value));
}

Element& Element::say(std::string_view text) {
  content_ += escape_markup(text);
  return *this;
}

Element& Element::add(const Element& child) {
  if (content_.empty()) content_ = "\n";
  content_ += child.markup() + "\n";
  return *this;
}

Element& Element::run(const Element& child) {
  content_ += child.markup();
  return *this;
}

std::string Element::markup() const {
  const std::string_view name = name_.text();
  if (name == "meta") return fmt::format("<{}{}>", name, attributes_);
  return fmt::format("<{0}{1}>{2}</{0}>", name, attributes_, content_);
}

std::string_view style_sheet(std::string_view name) {
  for (const embedded::File& each : embedded::style_sheets()) {
    if (each.path == name) return each.text;
  }
  return {};
}

std::string html_page(std::string_view title, std::string_view styles, const Element& body) {
  Element head("head");
  head.add(Element("meta").with("charset", "utf-8"));
  head.add(Element("meta")
               .with("name", "viewport")
               .with("content", "width=device-width, initial-scale=1"));
  head.add(Element("title").say(title));
  // The one element whose content is no text; its end is put before the head's.
  std::string head_text = head.markup();
  head_text.insert(head_text.rfind("</head>"), fmt::format("<style>\n{}</style>\n", styles));
  return fmt::format("<!DOCTYPE html>\n<html lang=\"en\">\n{}\n{}\n</html>\n", head_text,
                     body.markup());
}

}  // namespace maslin::report
