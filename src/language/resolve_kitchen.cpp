// SPDX-License-Identifier: Apache-2.0
#include "language/resolve_parts.hpp"
#include "language/values.hpp"

namespace maslin::language {
namespace {

using syntax::Kind;
using syntax::View;

class KitchenReader {
 public:
  KitchenReader(Context& context, Kitchen& result) : context_(context), result_(result) {}

  void read(View block) {
    for (const View statement : block) read_statement(statement);
  }

 private:
  std::optional<Rational> plain(View quantity, const Dimension& dimension, std::string_view what,
                                std::string_view example) {
    auto value = read_plain(context_, quantity, dimension, what, example);
    if (!value) result_.poisoned = true;
    return value;
  }

  void read_statement(View statement) {
    const View quantity = statement.child(Kind::quantity);
    switch (statement.kind()) {
      case Kind::pan:
        read_pan(statement);
        break;
      case Kind::hob:
        (void)plain(quantity, dimensions::power, "what a hob gives", "2.4 kW");
        later("how long to boil down on this hob", statement);
        break;
      case Kind::altitude:
        if (const auto metres =
                plain(quantity, dimensions::length, "an altitude", "altitude 140 m")) {
          result_.altitude = Length(*metres);
        }
        later("boiling at this altitude", statement);
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
        result_.law = text_of(text_child(statement));
        later("what the law of the place asks", statement);
        break;
      case Kind::bad_item:
        result_.poisoned = true;
        break;
      default:
        break;
    }
  }

  void later(std::string what, View statement) {
    result_.uncomputed.push_back({std::move(what), statement.span()});
  }

  void read_pan(View statement) {
    const auto volume =
        plain(statement.child(Kind::quantity), dimensions::volume, "what a pan holds", "pan 9 l");
    if (volume) result_.pan = Volume(*volume);
    if (const View across = statement.child(Kind::across)) {
      (void)plain(across.child(Kind::quantity), dimensions::length, "a width", "30 cm across");
    }
    if (const View weighs = statement.child(Kind::weighs)) {
      (void)plain(weighs.child(Kind::quantity), dimensions::mass, "a weight", "weighs 2.1 kg");
    }
    later("whether it fits the pan, and in how many boils", statement);
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
      (void)read_number(context_, number_child(jar));
      (void)plain(jar.child(Kind::quantity), dimensions::volume, "what a jar holds", "282 ml");
    }
    later("which jars it fills", statement);
  }

  void read_store(View statement) {
    result_.store_close = close_of(statement.child(Kind::basket_block));
    for (const View child : statement.child(Kind::basket_block)) {
      if (child.is(Kind::bad_item)) result_.poisoned = true;
      if (!child.is(Kind::basket_line)) continue;
      if (auto line = resolve_line(context_, child)) {
        result_.store.push_back(std::move(*line));
      } else {
        result_.poisoned = true;
      }
    }
  }

  Context& context_;
  Kitchen& result_;
};

}  // namespace

void resolve_kitchen(Context& context, View declaration, Kitchen& result) {
  result.name = title_of(declaration, "kitchen");
  result.span = declaration.child(Kind::keyword).span();
  KitchenReader(context, result).read(declaration.child(Kind::kitchen_block));
}

}  // namespace maslin::language
