// SPDX-License-Identifier: Apache-2.0
// The few rules that no grammar text can spell out: letters of Unicode, and nesting with a bound.
#pragma once

#include <utf8proc.h>

#include <tao/pegtl.hpp>

namespace maslin::grammar::characters {

namespace detail {

// The code point at the input's place, and how many bytes it takes; 0 bytes at the end.
template <class Input>
int peek(Input& in, utf8proc_int32_t& code_point) {
  const auto available = in.size(4);
  if (available == 0) return 0;
  const auto* bytes = reinterpret_cast<const utf8proc_uint8_t*>(in.current());
  const auto length = utf8proc_iterate(
      bytes, static_cast<utf8proc_ssize_t>(available < 4 ? available : 4), &code_point);
  return length > 0 ? static_cast<int>(length) : 0;
}

}  // namespace detail

struct Letter {
  using rule_t = Letter;
  using subs_t = tao::pegtl::empty_list;

  template <class Input>
  static bool match(Input& in) {
    if (in.empty()) return false;
    const auto first = static_cast<unsigned char>(*in.current());
    if (first < 0x80) {
      if ((first | 0x20) < 'a' || (first | 0x20) > 'z') return false;
      in.bump_in_this_line(1);
      return true;
    }
    utf8proc_int32_t code_point = 0;
    const int length = detail::peek(in, code_point);
    if (length == 0) return false;
    const auto category = utf8proc_category(code_point);
    if (category < UTF8PROC_CATEGORY_LU || category > UTF8PROC_CATEGORY_LO) return false;
    in.bump_in_this_line(static_cast<std::size_t>(length));
    return true;
  }
};

struct Mark {
  using rule_t = Mark;
  using subs_t = tao::pegtl::empty_list;

  template <class Input>
  static bool match(Input& in) {
    utf8proc_int32_t code_point = 0;
    const int length = detail::peek(in, code_point);
    if (length == 0 || code_point < 0x80) return false;
    const auto category = utf8proc_category(code_point);
    if (category != UTF8PROC_CATEGORY_MN && category != UTF8PROC_CATEGORY_MC) return false;
    in.bump_in_this_line(static_cast<std::size_t>(length));
    return true;
  }
};

inline constexpr int deepest = 64;

// Matches Content, which may hold itself, no deeper than `deepest`: the stack is not the user's.
template <class Content>
struct Nested {
  using rule_t = Nested;
  using subs_t = tao::pegtl::type_list<Content>;

  template <tao::pegtl::apply_mode A, tao::pegtl::rewind_mode M, template <class...> class Action,
            template <class...> class Control, class Input, class State>
  static bool match(Input& in, State& state) {
    if (state.depth == deepest) {
      state.note_too_deep(in);
      return false;
    }
    ++state.depth;
    const bool matched = Control<Content>::template match<A, M, Action, Control>(in, state);
    --state.depth;
    return matched;
  }
};

}  // namespace maslin::grammar::characters
