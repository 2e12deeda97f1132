// SPDX-License-Identifier: Apache-2.0
// HTML and SVG as values. Whatever text is put in comes out as that text: the names of elements and
// attributes are known when the program is compiled, and everything else is escaped.
#pragma once

#include <string>
#include <string_view>

namespace maslin::report {

// The name of an element or attribute: letters, digits and hyphens, and none that runs or fetches
// anything. One that is not so does not compile.
class MarkupName {
 public:
  // Implicit, so that names are written as the literals they are.
  consteval MarkupName(const char* text) : text_(text) {
    if (text_.empty() || !is_harmless(text_)) throw "no name of an element or attribute here";
    for (const char c : text_) {
      const bool letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
      if (!letter && (c < '0' || c > '9') && c != '-') throw "a sign that no name has";
    }
  }

  constexpr std::string_view text() const { return text_; }

 private:
  static constexpr bool is_harmless(std::string_view name) {
    if (name.substr(0, 2) == "on") return false;
    for (const std::string_view each : {"script", "style", "href", "src", "srcdoc", "iframe"}) {
      if (name == each) return false;
    }
    return true;
  }

  std::string_view text_;
};

// Text as it may stand between tags and between double quotes. Control characters, signs that turn
// the direction of writing and bytes that are no UTF-8 become the replacement character.
std::string escape_markup(std::string_view text);

class Element {
 public:
  explicit Element(MarkupName name) : name_(name) {}

  Element& with(MarkupName attribute, std::string_view value);
  // A length in the units of a drawing, to a hundredth.
  Element& with(MarkupName attribute, double value);
  // Text comes without a line end around it; children stand on lines of their own.
  Element& say(std::string_view text);
  Element& add(const Element& child);
  // A child that runs on in the line.
  Element& run(const Element& child);

  // The element and all in it; `meta` is the only one written without an end.
  std::string markup() const;

 private:
  MarkupName name_;
  std::string attributes_;
  std::string content_;
};

// One of the program's own style sheets, by the name of its file; empty where there is none.
std::string_view style_sheet(std::string_view name);

// A whole page. `styles` is the program's own style sheet and nothing else: it is not escaped.
std::string html_page(std::string_view title, std::string_view styles, const Element& body);

}  // namespace maslin::report
