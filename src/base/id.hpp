// SPDX-License-Identifier: Apache-2.0
// A typed index into a flat vector: an ingredient's id cannot be used as a unit's.
#pragma once

#include <compare>
#include <cstddef>
#include <cstdint>
#include <functional>

namespace maslin {

template <class Tag>
struct Id {
  static constexpr std::uint32_t nothing = 0xffffffff;
  std::uint32_t index = nothing;

  constexpr Id() = default;
  constexpr explicit Id(std::size_t i) : index(static_cast<std::uint32_t>(i)) {}
  constexpr bool valid() const { return index != nothing; }
  constexpr explicit operator bool() const { return valid(); }
  friend constexpr bool operator==(Id, Id) = default;
  friend constexpr auto operator<=>(Id, Id) = default;
};

}  // namespace maslin

template <class Tag>
struct std::hash<maslin::Id<Tag>> {
  std::size_t operator()(maslin::Id<Tag> id) const noexcept { return id.index; }
};
