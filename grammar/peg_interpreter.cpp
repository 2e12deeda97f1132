// SPDX-License-Identifier: Apache-2.0
#include "grammar/peg_interpreter.hpp"

#include <utf8proc.h>

#include <algorithm>
#include <stdexcept>

namespace maslin::grammar {
namespace {

struct CodePoint {
  std::int32_t value = 0;
  std::size_t length = 0;  // 0 at the end
};

CodePoint code_point(std::string_view text, std::size_t at) {
  if (at >= text.size()) return {};
  const auto first = static_cast<unsigned char>(text[at]);
  if (first < 0x80) return {first, 1};
  CodePoint found;
  const auto length =
      utf8proc_iterate(reinterpret_cast<const utf8proc_uint8_t*>(text.data() + at),
                       static_cast<utf8proc_ssize_t>(text.size() - at), &found.value);
  if (length > 0) found.length = static_cast<std::size_t>(length);
  return found;
}

bool is_lower(char c) { return c >= 'a' && c <= 'z'; }
bool is_name_character(char c) { return is_lower(c) || (c >= 'A' && c <= 'Z') || c == '_'; }

}  // namespace

// ---- Reading the grammar ------------------------------------------------------------------------

class PegReader {
 public:
  PegReader(std::string_view text, PegInterpreter& into) : text_(text), into_(into) {}

  void read() {
    skip();
    while (at_ < text_.size()) {
      const std::string name(take_name());
      if (!take("<-")) fail("`<-` expected");
      const std::size_t body = choice();
      if (!into_.rule_by_name_.emplace(name, into_.rules_.size()).second) {
        fail("a second rule " + name);
      }
      into_.rules_.push_back({name, body, is_lower(name.front())});
    }
    for (PegExpression& each : into_.expressions_) {
      if (each.op == PegOp::rule) each.target = rule(each.text);
    }
    into_.word_character_ = rule("WordCharacter");
  }

 private:
  [[noreturn]] void fail(const std::string& what) const {
    const auto line =
        std::count(text_.begin(), text_.begin() + static_cast<std::ptrdiff_t>(at_), '\n');
    throw std::runtime_error("maslin.peg:" + std::to_string(line + 1) + ": " + what);
  }

  std::size_t rule(const std::string& name) const {
    const auto found = into_.rule_by_name_.find(name);
    if (found == into_.rule_by_name_.end()) fail("no rule " + name);
    return found->second;
  }

  void skip() {
    while (at_ < text_.size()) {
      if (text_[at_] == '#') {
        at_ = std::min(text_.find('\n', at_), text_.size());
      } else if (text_[at_] == ' ' || text_[at_] == '\n') {
        ++at_;
      } else {
        return;
      }
    }
  }

  bool next_is(std::string_view wanted) const { return text_.substr(at_, wanted.size()) == wanted; }
  bool take(std::string_view wanted) {
    if (!next_is(wanted)) return false;
    at_ += wanted.size();
    skip();
    return true;
  }

  std::string_view take_name() {
    const std::size_t begin = at_;
    while (at_ < text_.size() && is_name_character(text_[at_])) ++at_;
    if (at_ == begin) fail("a name expected");
    const std::string_view name = text_.substr(begin, at_ - begin);
    skip();
    return name;
  }

  // From here to `close`, which is taken too.
  std::string take_until(char close) {
    const std::size_t end = text_.find(close, at_);
    if (end == std::string_view::npos) fail(std::string("no closing ") + close);
    std::string taken(text_.substr(at_, end - at_));
    at_ = end + 1;
    skip();
    return taken;
  }

  std::size_t add(PegExpression expression) {
    into_.expressions_.push_back(std::move(expression));
    return into_.expressions_.size() - 1;
  }
  std::size_t add(PegOp op, std::vector<std::size_t> parts) {
    return parts.size() == 1 && (op == PegOp::sequence || op == PegOp::choice)
               ? parts.front()
               : add(PegExpression{op, {}, std::move(parts), {}, 0});
  }

  std::size_t choice() {
    std::vector<std::size_t> parts;
    do {
      parts.push_back(sequence());
    } while (take("/"));
    return add(PegOp::choice, std::move(parts));
  }

  std::size_t sequence() {
    std::vector<std::size_t> parts;
    while (at_ < text_.size() && text_[at_] != '/' && text_[at_] != ')' && !next_is_rule()) {
      parts.push_back(prefixed());
    }
    if (parts.empty()) fail("nothing to match");
    return add(PegOp::sequence, std::move(parts));
  }

  bool next_is_rule() const {
    std::size_t end = at_;
    while (end < text_.size() && is_name_character(text_[end])) ++end;
    if (end == at_) return false;
    while (end < text_.size() && text_[end] == ' ') ++end;
    return text_.substr(end, 2) == "<-";
  }

  std::size_t prefixed() {
    if (take("&")) return add(PegOp::stands_next, {suffixed()});
    if (take("!")) return add(PegOp::not_next, {suffixed()});
    return suffixed();
  }

  std::size_t suffixed() {
    const std::size_t part = primary();
    if (take("*")) return add(PegOp::any_number, {part});
    if (take("+")) return add(PegOp::at_least_one, {part});
    if (take("?")) return add(PegOp::optional, {part});
    return part;
  }

  std::size_t primary() {
    if (take("(")) {
      const std::size_t inner = choice();
      if (!take(")")) fail("`)` expected");
      return inner;
    }
    if (take(".")) return add(PegOp::any_character, {});
    if (next_is("[")) return set();
    for (const auto& [quote, op] : {std::pair{'"', PegOp::word}, std::pair{'\'', PegOp::symbol}}) {
      if (text_[at_] != quote) continue;
      ++at_;
      return add(PegExpression{op, take_until(quote), {}, {}, 0});
    }
    if (next_is("<")) {
      ++at_;
      const std::string said = take_until('>');
      if (said == "a letter of Unicode") return add(PegOp::letter, {});
      if (said == "a combining mark of Unicode") return add(PegOp::mark, {});
      fail("unknown: " + said);
    }
    return add(PegExpression{PegOp::rule, std::string(take_name()), {}, {}, 0});
  }

  std::size_t set() {
    const std::size_t begin = at_++;
    PegExpression expression{PegOp::set, {}, {}, {}, 0};
    while (!next_is("]")) {
      const std::int32_t first = set_character();
      std::int32_t last = first;
      // A hyphen at either end of a set stands for itself.
      if (next_is("-") && text_.substr(at_, 2) != "-]") {
        ++at_;
        last = set_character();
      }
      expression.ranges.emplace_back(first, last);
    }
    ++at_;
    expression.text = text_.substr(begin, at_ - begin);
    skip();
    return add(std::move(expression));
  }

  std::int32_t set_character() {
    const CodePoint next = code_point(text_, at_);
    if (next.length == 0 || next.value == '\n') fail("no closing ]");
    at_ += next.length;
    if (next.value != '\\') return next.value;
    const char escaped = at_ < text_.size() ? text_[at_++] : '\0';
    switch (escaped) {
      case 'r':
        return '\r';
      case 'n':
        return '\n';
      case 't':
        return '\t';
      case '\\':
        return '\\';
      case 'u': {
        const std::string digits(text_.substr(at_, 4));
        at_ += digits.size();
        return static_cast<std::int32_t>(std::stoul(digits, nullptr, 16));
      }
      default:
        fail("unknown escape");
    }
  }

  std::string_view text_;
  PegInterpreter& into_;
  std::size_t at_ = 0;
};

PegInterpreter::PegInterpreter(std::string_view grammar) {
  PegReader(grammar, *this).read();
  matched_.resize(expressions_.size());
}

// ---- Running it ---------------------------------------------------------------------------------

std::optional<std::vector<PegNode>> PegInterpreter::run(std::string_view text) {
  text_ = text;
  nodes_.clear();
  PegExpression start{PegOp::rule, {}, {}, {}, 0};
  if (match_rule(start, 0) != text.size()) return std::nullopt;
  return std::move(nodes_);
}

std::size_t PegInterpreter::match(std::size_t index, std::size_t at) {
  const std::size_t mark = nodes_.size();
  const PegExpression& expression = expressions_[index];
  std::size_t end = failed;
  switch (expression.op) {
    case PegOp::sequence:
      end = match_parts(expression, at);
      break;
    case PegOp::choice:
      end = match_choice(expression, at);
      break;
    case PegOp::any_number:
      end = match_repeated(expression.parts.front(), at);
      break;
    case PegOp::at_least_one:
      end = match(expression.parts.front(), at);
      if (end != failed) end = match_repeated(expression.parts.front(), end);
      break;
    case PegOp::optional:
      end = match(expression.parts.front(), at);
      if (end == failed) end = at;
      break;
    case PegOp::stands_next:
    case PegOp::not_next:
      end = match_ahead(expression, at);
      break;
    case PegOp::word:
    case PegOp::symbol:
      end = match_characters(expression, at);
      break;
    case PegOp::rule:
      end = match_rule(expression, at);
      break;
    case PegOp::set:
    case PegOp::any_character:
    case PegOp::letter:
    case PegOp::mark:
      end = match_one(expression, at);
      break;
  }
  if (end == failed) {
    nodes_.resize(mark);
  } else {
    matched_[index] = true;
  }
  return end;
}

std::size_t PegInterpreter::match_parts(const PegExpression& expression, std::size_t at) {
  for (const std::size_t part : expression.parts) {
    at = match(part, at);
    if (at == failed) return failed;
  }
  return at;
}

std::size_t PegInterpreter::match_choice(const PegExpression& expression, std::size_t at) {
  for (const std::size_t part : expression.parts) {
    const std::size_t end = match(part, at);
    if (end != failed) return end;
  }
  return failed;
}

std::size_t PegInterpreter::match_repeated(std::size_t part, std::size_t at) {
  while (true) {
    const std::size_t end = match(part, at);
    if (end == failed) return at;
    if (end == at) throw std::runtime_error("maslin.peg: a repeated part takes nothing");
    at = end;
  }
}

std::size_t PegInterpreter::match_ahead(const PegExpression& expression, std::size_t at) {
  ++looking_ahead_;
  const bool stands = match(expression.parts.front(), at) != failed;
  --looking_ahead_;
  return stands == (expression.op == PegOp::stands_next) ? at : failed;
}

std::size_t PegInterpreter::match_characters(const PegExpression& expression, std::size_t at) {
  if (text_.substr(at, expression.text.size()) != expression.text) return failed;
  const std::size_t end = at + expression.text.size();
  const bool is_word = expression.op == PegOp::word;
  if (is_word) {
    ++looking_ahead_;
    const bool goes_on = match(rules_[word_character_].body, end) != failed;
    --looking_ahead_;
    if (goes_on) return failed;
  }
  if (looking_ahead_ == 0) nodes_.push_back({is_word ? "keyword" : "symbol", at, end});
  return end;
}

std::size_t PegInterpreter::match_one(const PegExpression& expression, std::size_t at) const {
  const CodePoint next = code_point(text_, at);
  if (next.length == 0) return failed;
  bool fits = expression.op == PegOp::any_character;
  if (expression.op == PegOp::set) {
    fits = std::any_of(expression.ranges.begin(), expression.ranges.end(), [&](const auto& range) {
      return range.first <= next.value && next.value <= range.second;
    });
  } else if (!fits) {
    const utf8proc_category_t category = utf8proc_category(next.value);
    fits = expression.op == PegOp::letter
               ? category >= UTF8PROC_CATEGORY_LU && category <= UTF8PROC_CATEGORY_LO
               : category == UTF8PROC_CATEGORY_MN || category == UTF8PROC_CATEGORY_MC;
  }
  return fits ? at + next.length : failed;
}

std::size_t PegInterpreter::match_rule(const PegExpression& expression, std::size_t at) {
  const PegRule& rule = rules_[expression.target];
  const bool makes_node = rule.makes_node && looking_ahead_ == 0;
  const std::size_t mark = nodes_.size();
  if (makes_node) nodes_.push_back({rule.name, at, at});
  const std::size_t end = match(rule.body, at);
  if (makes_node && end != failed) nodes_[mark].end = end;
  return end;
}

// ---- What it holds ------------------------------------------------------------------------------

std::vector<std::string> PegInterpreter::unreachable() const {
  std::vector<bool> reached(rules_.size());
  std::vector<std::size_t> open{rules_.front().body};
  reached.front() = true;
  while (!open.empty()) {
    const PegExpression& expression = expressions_[open.back()];
    open.pop_back();
    open.insert(open.end(), expression.parts.begin(), expression.parts.end());
    if (expression.op != PegOp::rule || reached[expression.target]) continue;
    reached[expression.target] = true;
    open.push_back(rules_[expression.target].body);
  }
  std::vector<std::string> names;
  for (std::size_t index = 0; index < rules_.size(); ++index) {
    if (!reached[index]) names.push_back(rules_[index].name);
  }
  return names;
}

std::vector<std::string> PegInterpreter::never_matched() const {
  std::vector<std::string> missing;
  std::size_t first = 0;  // the expressions of a rule end with its body
  for (const PegRule& rule : rules_) {
    for (std::size_t index = first; index <= rule.body; ++index) {
      if (matched_[index]) continue;
      const PegExpression& expression = expressions_[index];
      missing.push_back(
          rule.name + ": " +
          (expression.text.empty() ? "part " + std::to_string(index - first) : expression.text));
    }
    first = rule.body + 1;
  }
  return missing;
}

std::set<std::string> PegInterpreter::texts(PegOp op) const {
  std::set<std::string> found;
  for (const PegExpression& expression : expressions_) {
    if (expression.op == op) found.insert(expression.text);
  }
  return found;
}

}  // namespace maslin::grammar
