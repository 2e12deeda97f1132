// SPDX-License-Identifier: Apache-2.0
#include "syntax/parse.hpp"

#include <algorithm>
#include <string_view>
#include <vector>

#include "grammar/rules.hpp"

namespace maslin::syntax {
namespace {

namespace peg = tao::pegtl;

// ---- Which rules make nodes, and what a rule is called when it is missed ------------------------

constexpr int no_node = -1;

template <class Rule>
constexpr int node_kind = no_node;
template <class Characters>
constexpr int node_kind<grammar::Keyword<Characters>> = static_cast<int>(Kind::keyword);
template <class Characters>
constexpr int node_kind<grammar::Symbol<Characters>> = static_cast<int>(Kind::symbol);
#define MASLIN_NODE(name) \
  template <>             \
  constexpr int node_kind<grammar::name> = static_cast<int>(Kind::name);
#define MASLIN_FAMILY(name)
#include "syntax/node_kinds.def"
#undef MASLIN_NODE

template <class Rule>
constexpr std::string_view expected_as{};
template <>
constexpr std::string_view expected_as<grammar::Number> = "a number";
template <>
constexpr std::string_view expected_as<grammar::unit> = "a unit";
template <>
constexpr std::string_view expected_as<grammar::name> = "a name";
template <>
constexpr std::string_view expected_as<grammar::figure> = "a name";
template <>
constexpr std::string_view expected_as<grammar::Text> = "text in quotes";
template <>
constexpr std::string_view expected_as<grammar::Operand> = "a number";
template <>
constexpr std::string_view expected_as<grammar::Ending> = "the end of the statement";
template <>
constexpr std::string_view expected_as<grammar::comparison> = "`<=` or `>=`";
template <>
constexpr std::string_view expected_as<grammar::dots> = "`..`";
template <class Characters>
constexpr std::string_view expected_as<grammar::Symbol<Characters>> =
    grammar::Symbol<Characters>::text;

// Rules that are told as a whole, or not at all: nobody misses the `°F` of a unit.
template <class Rule>
constexpr bool hides_parts = !expected_as<Rule>.empty();
template <class Characters>
constexpr bool hides_parts<grammar::Symbol<Characters>> = false;
template <>
constexpr bool hides_parts<grammar::dash> = true;

template <class Rule>
constexpr std::string_view keyword_text{};
template <class Characters>
constexpr std::string_view keyword_text<grammar::Keyword<Characters>> =
    grammar::Keyword<Characters>::text;

// ---- What the rules work on ---------------------------------------------------------------------

// The furthest place any rule failed at, and what would have fitted there.
struct Furthest {
  std::uint32_t offset = 0;
  bool too_deep = false;
  std::vector<std::string_view> keywords;
  std::vector<std::string_view> others;

  void reset(std::uint32_t to) {
    offset = to;
    too_deep = false;
    keywords.clear();
    others.clear();
  }
};

// How much was known of a place before a rule was tried there.
struct Known {
  explicit Known(const Furthest& furthest)
      : offset(furthest.offset),
        keywords(furthest.keywords.size()),
        others(furthest.others.size()) {}

  std::uint32_t offset;
  std::size_t keywords;
  std::size_t others;

  void restore(Furthest& furthest, std::uint32_t at) const {
    if (furthest.offset != at || furthest.too_deep) return;
    furthest.keywords.resize(offset == at ? keywords : 0);
    furthest.others.resize(offset == at ? others : 0);
  }
};

void add_once(std::vector<std::string_view>& list, std::string_view text) {
  if (std::find(list.begin(), list.end(), text) == list.end()) list.push_back(text);
}

struct State {
  explicit State(std::string_view text) : begin(text.data()) {}

  const char* begin;
  int depth = 0;
  bool skipping = false;  // inside a bad_item, where nothing is missed any more
  std::vector<Node> nodes;
  std::vector<Misfit> misfits;
  Furthest furthest;

  template <class Input>
  std::uint32_t offset(const Input& in) const {
    return static_cast<std::uint32_t>(in.current() - begin);
  }
  template <class Input>
  void note_too_deep(const Input& in) {
    const std::uint32_t at = offset(in);
    if (skipping || at < furthest.offset) return;
    furthest.reset(at);
    furthest.too_deep = true;
  }
  void truncate(std::size_t size) {
    nodes.resize(size);
    while (!misfits.empty() && misfits.back().node >= size) misfits.pop_back();
  }
};

template <class Rule>
void note_failure(State& state, std::uint32_t at) {
  if constexpr (!expected_as<Rule>.empty() || !keyword_text<Rule>.empty()) {
    Furthest& furthest = state.furthest;
    if (state.skipping || at < furthest.offset || furthest.too_deep) return;
    if (at > furthest.offset) furthest.reset(at);
    if constexpr (!expected_as<Rule>.empty()) add_once(furthest.others, expected_as<Rule>);
    if constexpr (!keyword_text<Rule>.empty()) add_once(furthest.keywords, keyword_text<Rule>);
  }
}

template <class Rule>
struct Control : peg::normal<Rule> {
  template <peg::apply_mode A, peg::rewind_mode M, template <class...> class Action,
            template <class...> class Inner, class Input>
  static bool match(Input& in, State& state) {
    if constexpr (A == peg::apply_mode::nothing) {  // looking ahead: no nodes, nothing missed
      return peg::match<Rule, A, M, Action, Inner>(in, state);
    } else {
      const std::size_t mark = state.nodes.size();
      const std::uint32_t at = state.offset(in);
      if constexpr (node_kind<Rule> != no_node) {
        state.nodes.push_back({at, at, 0, static_cast<Kind>(node_kind<Rule>)});
      }
      const bool matched = attempt<A, M, Action, Inner>(in, state, at);
      if (!matched) {
        state.truncate(mark);
      } else if constexpr (node_kind<Rule> != no_node) {
        Node& node = state.nodes[mark];
        node.end = state.offset(in);
        node.next = static_cast<std::uint32_t>(state.nodes.size());
        if constexpr (is_bad_item) note_misfit(state, mark, at);
      }
      return matched;
    }
  }

 private:
  static constexpr bool is_bad_item = node_kind<Rule> == static_cast<int>(Kind::bad_item);

  template <peg::apply_mode A, peg::rewind_mode M, template <class...> class Action,
            template <class...> class Inner, class Input>
  static bool attempt(Input& in, State& state, std::uint32_t at) {
    const Known known(state.furthest);
    if constexpr (is_bad_item) state.skipping = true;
    const bool matched = peg::match<Rule, A, M, Action, Inner>(in, state);
    if constexpr (is_bad_item) state.skipping = false;
    if (!matched) {
      if constexpr (hides_parts<Rule>) known.restore(state.furthest, at);
      note_failure<Rule>(state, at);
    }
    return matched;
  }

  static void note_misfit(State& state, std::size_t node, std::uint32_t at) {
    Misfit misfit;
    misfit.node = static_cast<std::uint32_t>(node);
    misfit.offset = at;
    if (state.furthest.offset >= at) {
      misfit.offset = state.furthest.offset;
      misfit.too_deep = state.furthest.too_deep;
      misfit.keywords = state.furthest.keywords;
      misfit.others = state.furthest.others;
    }
    state.misfits.push_back(std::move(misfit));
    state.furthest.reset(state.nodes[node].end);
  }
};

}  // namespace

SyntaxTree parse(FileId file, std::string_view text) {
  SyntaxTree tree;
  tree.file = file;
  tree.text = text;
  State state(text);
  state.nodes.reserve(text.size() / 4 + 16);
  peg::memory_input<peg::tracking_mode::lazy, peg::eol::lf> in(text.data(), text.size(), "");
  // The rule takes any text whole; the tests hold it to that.
  const bool complete = peg::parse<grammar::file, peg::nothing, Control>(in, state) && in.empty();
  if (!complete) {
    state.nodes.assign(1, Node{0, static_cast<std::uint32_t>(text.size()), 1, Kind::file});
  }
  tree.nodes = std::move(state.nodes);
  tree.misfits = std::move(state.misfits);
  return tree;
}

}  // namespace maslin::syntax
