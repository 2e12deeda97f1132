// SPDX-License-Identifier: Apache-2.0
// The lossless syntax tree: one flat vector of nodes in the order of the text, each followed by
// what lies inside it. Every byte of the text is in exactly one node without children, comments
// and blanks included.
#pragma once

#include <cstdint>
#include <string_view>
#include <vector>

#include "source/source.hpp"

namespace maslin::syntax {

enum class Kind : std::uint8_t {
#define MASLIN_NODE(name) name,
#include "syntax/node_kinds.def"
#undef MASLIN_NODE
};

std::string_view name_of(Kind kind);

struct Node {
  std::uint32_t begin = 0;
  std::uint32_t end = 0;
  std::uint32_t next = 0;  // index of the first node after everything inside this one
  Kind kind{};
};
static_assert(sizeof(Node) == 16);

// What the parser could not read, and what would have fitted there.
struct Misfit {
  std::uint32_t node = 0;                  // the bad_item
  std::uint32_t offset = 0;                // how far the best reading of it came
  bool too_deep = false;                   // brackets nested beyond the bound
  std::vector<std::string_view> keywords;  // keywords that would have fitted
  std::vector<std::string_view> others;    // everything else that would have: "a number"
};

struct SyntaxTree {
  FileId file;
  std::string_view text;
  std::vector<Node> nodes;  // the first is the whole file
  std::vector<Misfit> misfits;
};

// A place in a tree; cheap to copy. An invalid view has no children and no text.
class View {
 public:
  View() = default;
  View(const SyntaxTree& tree, std::uint32_t index) : tree_(&tree), index_(index) {}

  bool valid() const { return tree_ != nullptr; }
  explicit operator bool() const { return valid(); }
  Kind kind() const { return node().kind; }
  bool is(Kind kind) const { return valid() && node().kind == kind; }
  Span span() const { return {tree_->file, node().begin, node().end}; }
  std::string_view text() const {
    return tree_->text.substr(node().begin, node().end - node().begin);
  }
  std::uint32_t index() const { return index_; }
  const SyntaxTree& tree() const { return *tree_; }

  // First child of this kind; invalid when there is none.
  View child(Kind kind) const;
  bool has(Kind kind) const { return child(kind).valid(); }
  // The keyword with this text among the children.
  bool has_keyword(std::string_view text) const;

  class Iterator {
   public:
    Iterator(const SyntaxTree* tree, std::uint32_t index) : tree_(tree), index_(index) {}
    View operator*() const { return {*tree_, index_}; }
    Iterator& operator++() {
      index_ = tree_->nodes[index_].next;
      return *this;
    }
    friend bool operator==(const Iterator&, const Iterator&) = default;

   private:
    const SyntaxTree* tree_;
    std::uint32_t index_;
  };
  Iterator begin() const { return {tree_, valid() ? index_ + 1 : 0}; }
  Iterator end() const { return {tree_, valid() ? node().next : 0}; }

 private:
  const Node& node() const { return tree_->nodes[index_]; }

  const SyntaxTree* tree_ = nullptr;
  std::uint32_t index_ = 0;
};

inline View root(const SyntaxTree& tree) { return {tree, 0}; }

}  // namespace maslin::syntax
