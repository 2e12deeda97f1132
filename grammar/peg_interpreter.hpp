// SPDX-License-Identifier: Apache-2.0
// Runs grammar/maslin.peg as it stands, so that the tests can hold the parser to the text people
// read. Plain backtracking and no bound on nesting: for tests only.
#pragma once

#include <cstddef>
#include <cstdint>
#include <map>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace maslin::grammar {

enum class PegOp : std::uint8_t {
  sequence,
  choice,
  any_number,
  at_least_one,
  optional,
  stands_next,
  not_next,
  word,
  symbol,
  set,
  any_character,
  letter,
  mark,
  rule,
};

struct PegExpression {
  PegOp op{};
  std::string text;  // of a word, a symbol, a set as written, or the name of a rule
  std::vector<std::size_t> parts;
  std::vector<std::pair<std::int32_t, std::int32_t>> ranges;  // of a set
  std::size_t target = 0;                                     // of a rule
};

struct PegRule {
  std::string name;
  std::size_t body = 0;  // index of its expression
  bool makes_node = false;
};

struct PegNode {
  std::string_view kind;
  std::size_t begin = 0;
  std::size_t end = 0;
  friend bool operator==(const PegNode&, const PegNode&) = default;
};

class PegInterpreter {
 public:
  // Throws std::runtime_error when the text is no grammar.
  explicit PegInterpreter(std::string_view grammar);

  // The nodes in preorder; nothing when the first rule does not take the text whole. Their kinds
  // last as long as the interpreter.
  std::optional<std::vector<PegNode>> run(std::string_view text);

  const std::vector<PegRule>& rules() const { return rules_; }
  std::vector<std::string> unreachable() const;
  // What no text run so far has matched, each as "rule: part".
  std::vector<std::string> never_matched() const;
  // All texts of words, or of symbols.
  std::set<std::string> texts(PegOp op) const;

 private:
  friend class PegReader;

  static constexpr std::size_t failed = static_cast<std::size_t>(-1);

  // Each gives the place after the match, or `failed`.
  std::size_t match(std::size_t expression, std::size_t at);
  std::size_t match_parts(const PegExpression& expression, std::size_t at);
  std::size_t match_choice(const PegExpression& expression, std::size_t at);
  std::size_t match_repeated(std::size_t part, std::size_t at);
  std::size_t match_ahead(const PegExpression& expression, std::size_t at);
  std::size_t match_characters(const PegExpression& expression, std::size_t at);
  std::size_t match_one(const PegExpression& expression, std::size_t at) const;
  std::size_t match_rule(const PegExpression& expression, std::size_t at);

  std::vector<PegExpression> expressions_;
  std::vector<PegRule> rules_;
  std::map<std::string, std::size_t, std::less<>> rule_by_name_;
  std::size_t word_character_ = 0;  // the rule that must not follow a word

  std::string_view text_;
  std::vector<PegNode> nodes_;
  int looking_ahead_ = 0;
  std::vector<bool> matched_;  // by expression
};

}  // namespace maslin::grammar
