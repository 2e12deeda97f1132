// SPDX-License-Identifier: Apache-2.0
// What is wrong, where, why it matters and what mends it: a value, rendered elsewhere.
#pragma once

#include <cstdint>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <tuple>
#include <vector>

#include "source/source.hpp"

namespace maslin {

enum class Code : std::uint16_t {
#define MASLIN_CODE(identifier, name, severity, summary) identifier,
#include "diagnostic/codes.def"
#undef MASLIN_CODE
};

enum class Severity : std::uint8_t { error, warning };

std::string_view name_of(Code code);     // as printed and as `explain` takes it
std::string_view summary_of(Code code);  // one line
Severity severity_of(Code code);
std::optional<Code> code_named(std::string_view name);
const std::vector<Code>& all_codes();
// The page of `explain`, Markdown.
std::string_view page_of(Code code);

struct Label {
  Span span;
  std::string text;  // may be empty: the place alone
};

// Replaces the bytes of `span`; an empty span inserts.
struct Edit {
  Span span;
  std::string text;
};

struct Fix {
  enum class Kind : std::uint8_t {
    safe,      // keeps or restores the meaning that was plainly meant
    suggested  // may not be what was meant
  };
  Kind kind = Kind::suggested;
  std::string title;  // what the edit does, in the imperative
  std::vector<Edit> edits;
};

struct Diagnostic {
  Code code{};
  std::string message;             // what is wrong: lower-case start, no full stop
  std::optional<Label> primary;    // none for what has no place in a text (a missing file)
  std::vector<Label> because;      // the other places that contribute, nearest first
  std::string why;                 // why it matters; may be empty
  std::vector<std::string> mends;  // in words, best first
  std::vector<Fix> fixes;          // as edits, best first

  Diagnostic& with_why(std::string text) & {
    why = std::move(text);
    return *this;
  }
  Diagnostic& with_mend(std::string text) & {
    mends.push_back(std::move(text));
    return *this;
  }
  Diagnostic& with_fix(Fix fix) & {
    fixes.push_back(std::move(fix));
    return *this;
  }
  Diagnostic& with_because(Span span, std::string text) & {
    because.push_back({span, std::move(text)});
    return *this;
  }
};

// Collects what the stages find. One cause, one report: a second report of the same code at the
// same place is dropped.
class Diagnostics {
 public:
  Diagnostic& report(Code code, Span span, std::string message, std::string label = {});
  Diagnostic& report_without_place(Code code, std::string message);
  const std::vector<Diagnostic>& all() const { return all_; }
  std::vector<Diagnostic>& all() { return all_; }
  bool has_errors() const;
  std::size_t error_count() const;
  // By file in order of loading, then by place; what has no place comes first.
  void sort();

 private:
  std::vector<Diagnostic> all_;
  std::set<std::tuple<Code, std::uint32_t, std::uint32_t, std::uint32_t>> places_;
  Diagnostic dropped_;
};

}  // namespace maslin
