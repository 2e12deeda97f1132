// SPDX-License-Identifier: Apache-2.0
// What names mean, and which known name an unknown one may have meant.
#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

#include "language/program.hpp"
#include "syntax/tree.hpp"

namespace maslin::language {

// The words of a name with single blanks between them and without quotes; composed accents, so
// that `é` typed in one way or the other is the same name.
std::string normal_name(syntax::View name);
std::string normal_name(std::string_view text);
// The content of a text in quotes.
std::string text_of(syntax::View text);
// The node that holds text in quotes among the children; invalid when there is none.
syntax::View text_child(syntax::View parent);

// The known names within a third of the letters (at least one edit), nearest first, at most
// `count`; also plural forms, and names of which `unknown` is a word.
std::vector<std::string> nearest(std::string_view unknown,
                                 const std::vector<std::string_view>& known, std::size_t count);

template <class Value>
class NameTable {
 public:
  struct Entry {
    Value value;
    Span span;
  };
  // False when the name is taken; the first stays.
  bool add(const std::string& name, Value value, Span span) {
    return entries_.try_emplace(name, Entry{value, span}).second;
  }
  // What was known by this name is known by it no more.
  void replace(const std::string& name, Value value, Span span) {
    entries_.insert_or_assign(name, Entry{value, span});
  }
  const Entry* find(const std::string& name) const {
    const auto found = entries_.find(name);
    return found == entries_.end() ? nullptr : &found->second;
  }
  std::vector<std::string_view> all() const {
    std::vector<std::string_view> names;
    names.reserve(entries_.size());
    for (const auto& [name, entry] : entries_) names.push_back(name);
    return names;
  }

 private:
  std::unordered_map<std::string, Entry> entries_;
};

// Classes and ingredients share one name space: a slot takes either.
struct Thing {
  ClassId of_class;
  IngredientId ingredient;
};

struct Names {
  NameTable<Thing> things;
  NameTable<UnitId> units;
  NameTable<FrameworkId> frameworks;
  NameTable<RouteId> routes;
};

}  // namespace maslin::language
