// SPDX-License-Identifier: Apache-2.0
#include <fmt/format.h>

#include "language/law.hpp"
#include "language/resolve_parts.hpp"
#include "language/values.hpp"

namespace maslin::language {
namespace {

using syntax::Kind;
using syntax::View;

// A slip of a unit makes a figure a thousand times too large or too small.
struct Sensible {
  std::string_view what;  // "what a pan holds"
  Dimension dimension;
  std::string_view example;
  Bounds between;  // in base units
  std::string_view range;
};
const Sensible pan_volume{
    "what a pan holds", dimensions::volume, "pan 9 l", {200, 1000000}, "200 ml and 1000 l"};
const Sensible pan_width{
    "a pan's width", dimensions::length, "30 cm across", {50, 3000}, "5 cm and 3 m"};
const Sensible pan_weight{
    "what a pan weighs", dimensions::mass, "weighs 2.1 kg", {50, 200000}, "50 g and 200 kg"};
const Sensible hob_power{
    "what a hob gives", dimensions::power, "2.4 kW", {100, 100000}, "100 W and 100 kW"};
const Sensible weight_lost{
    "what a pan loses", dimensions::mass, "lost 250 g in 10 min", {1, 100000}, "1 g and 100 kg"};
const Sensible time_between{"the time between two weighings",
                            dimensions::time,
                            "lost 250 g in 10 min",
                            {60, 36000},
                            "1 min and 10 h"};
// Below the Dead Sea's shore and above the highest towns nobody cooks.
const Sensible height{
    "an altitude", dimensions::length, "altitude 140 m", {0, 5500000}, "0 and 5500 m"};
const Sensible jar_volume{
    "what a jar holds", dimensions::volume, "282 ml", {10, 20000}, "10 ml and 20 l"};

// How many jars one statement may count: more is a slip of the finger.
constexpr long most_jars = 100000;

std::optional<Rational> read_sensible(Context& context, View quantity, const Sensible& kind) {
  auto value = read_plain(context, quantity, kind.dimension, kind.what, kind.example);
  if (!value || kind.between.contains(*value)) return value;
  context
      .report(Code::figure_out_of_range, quantity.span(),
              fmt::format("{} lies between {}, and this does not", kind.what, kind.range))
      .with_mend(fmt::format("look at the unit: `{}`", kind.example));
  return std::nullopt;
}

class KitchenReader {
 public:
  KitchenReader(Context& context, Kitchen& result) : context_(context), result_(result) {}

  void read(View block) {
    report_repeats(block);
    for (const View statement : block) read_statement(statement);
  }

 private:
  std::optional<Rational> plain(View quantity, const Dimension& dimension, std::string_view what,
                                std::string_view example) {
    auto value = read_plain(context_, quantity, dimension, what, example);
    if (!value) result_.poisoned = true;
    return value;
  }

  std::optional<Rational> sensible(View quantity, const Sensible& kind) {
    auto value = read_sensible(context_, quantity, kind);
    if (!value) result_.poisoned = true;
    return value;
  }

  // What a kitchen has one of.
  void report_repeats(View block) {
    for (const Kind kind : {Kind::pan, Kind::hob, Kind::altitude, Kind::scales, Kind::spoons,
                            Kind::jars, Kind::law}) {
      View first;
      for (const View statement : block) {
        if (!statement.is(kind)) continue;
        const View word = statement.child(Kind::keyword);
        if (first) {
          report_duplicate(context_, Code::duplicate, "the statement", std::string(word.text()),
                           word.span(), first.span(),
                           "leave one out; another pan or hob is another kitchen");
          result_.poisoned = true;
        } else {
          first = word;
        }
      }
    }
  }

  void read_statement(View statement) {
    switch (statement.kind()) {
      case Kind::pan:
        read_pan(statement);
        break;
      case Kind::hob:
        read_hob(statement);
        break;
      case Kind::altitude:
        if (const auto metres = sensible(statement.child(Kind::quantity), height)) {
          result_.altitude = Length(*metres);
        }
        break;
      case Kind::scales:
        read_scales(statement);
        break;
      case Kind::spoons:
        read_spoons(statement);
        break;
      case Kind::jars:
        read_jars(statement);
        break;
      case Kind::store:
        read_store(statement);
        break;
      case Kind::law:
        read_law(statement);
        break;
      case Kind::bad_item:
        result_.poisoned = true;
        break;
      default:
        break;
    }
  }

  void read_law(View statement) {
    const View text = text_child(statement);
    result_.law = text_of(text);
    if (!read_as_of(context_, statement, result_.law_as_of)) result_.poisoned = true;
    if (const Law* law = law_named(result_.law)) {
      check_date(*law, statement.child(Kind::as_of));
      return;
    }
    context_
        .report(Code::unknown_law, text.span(),
                fmt::format("no law is known by the name `{}`", result_.law))
        .with_why("what a label has to say differs from place to place")
        .with_mend(fmt::format("one of {}", known_laws()))
        .with_mend("leave the line out: the label then leaves blank what a law may ask");
    result_.poisoned = true;
  }

  void check_date(const Law& law, View as_of) {
    if (!result_.law_as_of || !(last_day_of(*result_.law_as_of) < law.since)) return;
    context_
        .report(Code::law_too_early, as_of.span(),
                fmt::format("what the law of {} asked of a label then is not known here", law.name))
        .with_why(fmt::format("the table begins with {}", text_of(law.since)))
        .with_mend("leave the date out: the latest that is known is taken");
    result_.poisoned = true;
  }

  void report_unknown(View material, std::string_view message,
                      const std::vector<std::string_view>& known) {
    const std::string name = normal_name(material.text());
    auto& found = context_.report(Code::unknown_equipment, material.span(),
                                  fmt::format("{} `{}` is not known", message, name));
    const auto near = nearest(name, known, 1);
    if (near.empty()) {
      found.with_mend("one of " + one_of({known.begin(), known.end()}));
    } else {
      found.with_mend(fmt::format("did you mean `{}`?", near[0]));
      found.with_fix(
          {Fix::Kind::suggested, "write `" + near[0] + "`", {{material.span(), near[0]}}});
    }
    result_.poisoned = true;
  }

  void read_pan(View statement) {
    const auto volume = sensible(statement.child(Kind::quantity), pan_volume);
    if (!volume) return;
    Pan pan;
    pan.holds = Volume(*volume);
    pan.span = statement.span();
    if (const View across = statement.child(Kind::across)) {
      const auto width = sensible(across.child(Kind::quantity), pan_width);
      if (width) pan.across = Length(*width);
    }
    if (const View weighs = statement.child(Kind::weighs)) {
      const auto weight = sensible(weighs.child(Kind::quantity), pan_weight);
      if (weight) pan.weighs = Mass(*weight);
    }
    if (const View material = statement.child(Kind::material)) {
      pan.material = normal_name(material.text());
      const auto reacts = reacts_with_acid(pan.material);
      if (!reacts) report_unknown(material, "the material of a pan", pan_materials());
      pan.reacts_with_acid = reacts.value_or(false);
    }
    check_shape(statement, pan);
    result_.pan = pan;
  }

  // A pan that holds what it says at that width is neither a plate nor a pipe.
  void check_shape(View statement, const Pan& pan) {
    if (!pan.across) return;
    const Rational square = pan.across->in_base() * pan.across->in_base();
    const Rational depth = pan.holds.in_base() * 1000 / square;  // of a square pan as wide, mm
    const Bounds usual{pan.across->in_base() / 12, pan.across->in_base() * 3};
    if (usual.contains(depth)) return;
    context_
        .report(
            Code::figure_out_of_range, statement.span(),
            fmt::format("a pan of {} l that is {} cm across would be about {} cm deep",
                        (pan.holds.in_base() / 1000).to_decimal(1),
                        (pan.across->in_base() / 10).to_decimal(1),
                        (depth * Rational(Rational::Wide{14}, Rational::Wide{110})).to_decimal(1)))
        .with_mend("measure it again: what it holds to the brim, and how wide it is inside");
    result_.poisoned = true;
  }

  void read_hob(View statement) {
    const auto power = sensible(statement.child(Kind::quantity), hob_power);
    if (!power) return;
    Hob hob;
    hob.power = Power(*power);
    hob.span = statement.span();
    if (const View kind = statement.child(Kind::material)) {
      const auto known = hob_named(normal_name(kind.text()));
      if (!known) report_unknown(kind, "a hob of the kind", hob_names());
      hob.kind = known.value_or(HobKind::not_stated);
    }
    if (const View weighed = statement.child(Kind::weighed_twice)) {
      hob.weighed_twice = read_weighed_twice(weighed);
    }
    result_.hob = hob;
  }

  std::optional<WeighedTwice> read_weighed_twice(View weighed) {
    std::vector<View> quantities;
    for (const View child : weighed) {
      if (child.is(Kind::quantity)) quantities.push_back(child);
    }
    const auto lost = sensible(quantities[0], weight_lost);
    const auto between = sensible(quantities[1], time_between);
    if (!lost || !between) return std::nullopt;
    return WeighedTwice{Mass(*lost), Duration(*between), weighed.span()};
  }

  void read_scales(View statement) {
    const auto step = plain(statement.child(Kind::quantity), dimensions::mass,
                            "what scales weigh to", "scales to 5 g");
    if (step && !step->is_positive()) {
      context_.report(Code::bad_number, statement.span(), "scales cannot weigh to nothing");
      result_.poisoned = true;
    } else if (step) {
      result_.scale_step = Mass(*step);
    }
    if (const View limit = statement.child(Kind::scale_limit)) {
      const auto most = plain(limit.child(Kind::quantity), dimensions::mass,
                              "the most that scales carry", "up to 5 kg");
      if (most) result_.scale_limit = Mass(*most);
    }
  }

  void read_spoons(View statement) {
    const auto step =
        plain(statement.child(Kind::quantity), dimensions::volume, "a spoon", "spoons to 1/4 tsp");
    if (step && step->is_positive()) result_.spoon_step = Volume(*step);
  }

  void read_jars(View statement) {
    for (const View jar : statement) {
      if (!jar.is(Kind::jar_count)) continue;
      if (const auto stock = read_jar_count(context_, jar)) {
        result_.jars.push_back(*stock);
      } else {
        result_.poisoned = true;
      }
    }
  }

  void read_store(View statement) {
    const View block = statement.child(Kind::basket_block);
    result_.store_close = close_of(block);
    if (!resolve_lines(context_, block, result_.store, LineOf::stock)) result_.poisoned = true;
  }

  Context& context_;
  Kitchen& result_;
};

}  // namespace

std::optional<JarStock> read_jar_count(Context& context, View jar) {
  const auto count = read_number(context, number_child(jar));
  const auto holds = read_sensible(context, jar.child(Kind::quantity), jar_volume);
  if (!count || !holds) return std::nullopt;
  if (!count->is_integer() || !count->is_positive() || *count > Rational(most_jars)) {
    context
        .report(Code::figure_out_of_range, number_child(jar).span(),
                fmt::format("jars are counted whole, from 1 to {}", most_jars))
        .with_mend("write how many there are: `24 of 282 ml`");
    return std::nullopt;
  }
  JarStock stock{static_cast<long>(count->to_double()), Volume(*holds), jar.span()};
  if (const View price = jar.child(Kind::jar_price)) {
    stock.price = read_number(context, number_child(price));
    if (!stock.price) return std::nullopt;
  }
  return stock;
}

void resolve_kitchen(Context& context, View declaration, Kitchen& result) {
  result.name = title_of(declaration, "kitchen");
  result.span = declaration.child(Kind::keyword).span();
  KitchenReader(context, result).read(declaration.child(Kind::kitchen_block));
}

}  // namespace maslin::language
