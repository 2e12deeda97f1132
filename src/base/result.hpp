// SPDX-License-Identifier: Apache-2.0
// A value or the reason there is none.
#pragma once

#include <utility>
#include <variant>

namespace maslin {

template <class Error>
struct Failure {
  Error error;
};
template <class Error>
Failure(Error) -> Failure<Error>;

template <class Value, class Error>
class [[nodiscard]] Result {
 public:
  Result(Value value) : content_(std::in_place_index<0>, std::move(value)) {}
  Result(Failure<Error> failure) : content_(std::in_place_index<1>, std::move(failure.error)) {}

  bool ok() const { return content_.index() == 0; }
  explicit operator bool() const { return ok(); }
  const Value& value() const { return *std::get_if<0>(&content_); }
  Value& value() { return *std::get_if<0>(&content_); }
  const Error& error() const { return *std::get_if<1>(&content_); }
  const Value& operator*() const { return value(); }
  const Value* operator->() const { return &value(); }

 private:
  std::variant<Value, Error> content_;
};

}  // namespace maslin
