// SPDX-License-Identifier: Apache-2.0
#include "language/image.hpp"

#include <algorithm>
#include <cstring>
#include <type_traits>
#include <vector>

namespace maslin::language {
namespace {

// One description of each record serves both directions.
class Writer {
 public:
  static constexpr bool reads = false;

  template <class T>
  void value(T& plain) {
    static_assert(std::is_trivially_copyable_v<T>);
    bytes_.append(reinterpret_cast<const char*>(&plain), sizeof(T));
  }
  void text(std::string& string) {
    auto size = static_cast<std::uint32_t>(string.size());
    value(size);
    bytes_ += string;
  }
  std::uint32_t count(std::size_t size) {
    auto written = static_cast<std::uint32_t>(size);
    value(written);
    return written;
  }
  bool good() const { return true; }
  std::string take() { return std::move(bytes_); }

 private:
  std::string bytes_;
};

class Reader {
 public:
  static constexpr bool reads = true;

  explicit Reader(std::string_view bytes) : bytes_(bytes) {}

  template <class T>
  void value(T& plain) {
    static_assert(std::is_trivially_copyable_v<T>);
    if (!has(sizeof(T))) return;
    std::memcpy(static_cast<void*>(&plain), bytes_.data() + at_, sizeof(T));
    at_ += sizeof(T);
  }
  void text(std::string& string) {
    const std::uint32_t size = count(0);
    if (!has(size)) return;
    string.assign(bytes_.substr(at_, size));
    at_ += size;
  }
  std::uint32_t count(std::size_t) {
    std::uint32_t size = 0;
    value(size);
    // Every element takes at least a byte, so a larger count is no image of ours.
    return has(size) ? size : 0;
  }
  bool good() const { return good_; }
  bool at_end() const { return good_ && at_ == bytes_.size(); }

 private:
  bool has(std::size_t size) {
    good_ = good_ && size <= bytes_.size() - at_;
    return good_;
  }

  std::string_view bytes_;
  std::size_t at_ = 0;
  bool good_ = true;
};

template <class Archive, class T>
void pass(Archive& archive, T& item);

template <class Archive, class T>
void pass(Archive& archive, std::vector<T>& list) {
  const std::uint32_t size = archive.count(list.size());
  if constexpr (Archive::reads) list.resize(size);
  for (std::size_t i = 0; i < size && archive.good(); ++i) {
    if constexpr (std::is_same_v<T, bool>) {
      bool bit = list[i];
      archive.value(bit);
      list[i] = bit;
    } else {
      pass(archive, list[i]);
    }
  }
}

template <class Archive, class T>
void pass(Archive& archive, std::optional<T>& item) {
  bool present = item.has_value();
  archive.value(present);
  if (!present) return;
  if constexpr (Archive::reads) item.emplace();
  pass(archive, *item);
}

template <class Archive>
void pass(Archive& archive, std::string& text) {
  archive.text(text);
}

template <class Archive, class... Fields>
void pass_all(Archive& archive, Fields&... fields) {
  (pass(archive, fields), ...);
}

template <class Archive>
void describe(Archive& a, Figure& x) {
  pass_all(a, x.value, x.span, x.origin);
}
template <class Archive>
void describe(Archive& a, Unit& x) {
  pass_all(a, x.name, x.dimension, x.factor, x.could_be, x.span);
}
template <class Archive>
void describe(Archive& a, Class& x) {
  pass_all(a, x.name, x.also, x.parents, x.conditions, x.usually, x.span);
}
template <class Archive>
void describe(Archive& a, Ingredient& x) {
  pass_all(a, x.name, x.also, x.parents, x.composition, x.ph, x.edible, x.density, x.piece,
           x.acidity, x.soluble_solids, x.total_solids, x.ash_alkalinity, x.pungency, x.raw,
           x.boil_first, x.raw_reason, x.allergens_stated, x.allergens, x.compound, x.made_of,
           x.notes, x.sources, x.composition_origin, x.span, x.composition_span);
}
template <class Archive>
void describe(Archive& a, Target& x) {
  pass_all(a, x.name, x.of_class, x.ingredient, x.narrowed, x.span);
}
template <class Archive>
void describe(Archive& a, CutSize& x) {
  pass_all(a, x.text, x.at_most, x.span);
}
template <class Archive>
void describe(Archive& a, ProduceShare& x) {
  pass_all(a, x.target, x.range, x.prefer, x.cut, x.span, x.range_span);
}
template <class Archive>
void describe(Archive& a, Addition& x) {
  pass_all(a, x.target, x.measured, x.range, x.prefer, x.strength, x.unit, x.span, x.range_span);
}
template <class Archive>
void describe(Archive& a, Substitution& x) {
  pass_all(a, x.donor, x.replaced, x.addition, x.by, x.extent, x.cap, x.only, x.span, x.cap_span);
}
template <class Archive>
void describe(Archive& a, Limit& x) {
  pass_all(a, x.property, x.share_of, x.range, x.has_low, x.has_high, x.whole, x.route, x.claim,
           x.span);
}
template <class Archive>
void describe(Archive& a, ToRead& x) {
  pass_all(a, x.figure, x.range, x.has_low, x.has_high, x.dimension, x.span);
}
template <class Archive>
void describe(Archive& a, Refusal& x) {
  pass_all(a, x.targets, x.because, x.span);
}
template <class Archive>
void describe(Archive& a, Process& x) {
  pass_all(a, x.product, x.steps, x.largest_jar, x.source, x.span);
}
template <class Archive>
void describe(Archive& a, Recipe& x) {
  pass_all(a, x.product, x.shares, x.additions, x.headspace, x.notes, x.sources, x.span);
}
template <class Archive>
void describe(Archive& a, Route& x) {
  pass_all(a, x.name, x.place, x.as_of, x.floors, x.readings, x.refusals, x.processes, x.recipes,
           x.liquor, x.headspace, x.notes, x.sources, x.span);
}
template <class Archive>
void describe(Archive& a, Standard& x) {
  pass_all(a, x.name, x.place, x.as_of, x.reserved_name, x.limits, x.notes, x.sources, x.span);
}
template <class Archive>
void describe(Archive& a, RouteClaim& x) {
  pass_all(a, x.route, x.product, x.product_span, x.span);
}
template <class Archive>
void describe(Archive& a, Variant& x) {
  pass_all(a, x.name, x.adjustments, x.span);
}
template <class Archive>
void describe(Archive& a, Part& x) {
  pass_all(a, x.name, x.slots, x.fraction, x.rest, x.span);
}
template <class Archive>
void describe(Archive& a, Step& x) {
  pass_all(a, x.kind, x.parts, x.in, x.strength, x.lasting, x.heat, x.lid, x.solids, x.weight,
           x.kept, x.lost, x.until, x.span);
}
template <class Archive>
void describe(Archive& a, Stage& x) {
  pass_all(a, x.name, x.days_before, x.steps, x.span);
}
template <class Archive>
void describe(Archive& a, Method& x) {
  pass_all(a, x.stages, x.filling, x.span);
}
template <class Archive>
void describe(Archive& a, OnceOpened& x) {
  pass_all(a, x.within, x.span);
}
template <class Archive>
void describe(Archive& a, Framework& x) {
  pass_all(a, x.name, x.title, x.version, x.status, x.status_source, x.status_span, x.taste,
           x.shares, x.additions, x.substitutions, x.limits, x.routes, x.variants, x.method,
           x.mature, x.best_within, x.once_opened, x.notes, x.sources, x.refines, x.span,
           x.produce_span, x.poisoned);
}
template <class Archive>
void describe(Archive& a, Program& x) {
  pass_all(a, x.units, x.classes, x.ingredients, x.frameworks, x.routes, x.standards, x.classes_of,
           x.library_frameworks, x.library_classes, x.library_routes, x.library_standards);
}

template <class Archive, class T>
void pass(Archive& archive, T& item) {
  if constexpr (std::is_trivially_copyable_v<T>) {
    archive.value(item);
  } else {
    describe(archive, item);
  }
}

template <class Archive, class Value>
void pass_names(Archive& archive, NameTable<Value>& table) {
  if constexpr (Archive::reads) {
    const std::uint32_t size = archive.count(0);
    for (std::uint32_t i = 0; i < size && archive.good(); ++i) {
      std::string name;
      typename NameTable<Value>::Entry entry{};
      archive.text(name);
      archive.value(entry.value);
      archive.value(entry.span);
      table.add(name, entry.value, entry.span);
    }
  } else {
    auto names = table.all();
    std::sort(names.begin(), names.end());  // the same library gives the same bytes
    archive.count(names.size());
    for (const std::string_view each : names) {
      std::string name(each);
      auto entry = *table.find(name);
      archive.text(name);
      archive.value(entry.value);
      archive.value(entry.span);
    }
  }
}

template <class Archive>
void pass_resolved(Archive& archive, Resolved& resolved) {
  pass(archive, resolved.program);
  pass_names(archive, resolved.names.things);
  pass_names(archive, resolved.names.units);
  pass_names(archive, resolved.names.frameworks);
  pass_names(archive, resolved.names.routes);
}

}  // namespace

std::string encode(const Resolved& resolved) {
  Resolved copy = resolved;
  Writer writer;
  pass_resolved(writer, copy);
  return writer.take();
}

std::optional<Resolved> decode(std::string_view bytes) {
  Reader reader(bytes);
  Resolved resolved;
  pass_resolved(reader, resolved);
  if (!reader.at_end()) return std::nullopt;
  return resolved;
}

}  // namespace maslin::language
