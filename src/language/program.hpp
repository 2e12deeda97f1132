// SPDX-License-Identifier: Apache-2.0
// The resolved, typed model: names have become ids, text has become exact quantities, and every
// figure and rule still knows the place it was written at. Flat vectors; the standard library's
// entries come first, the user's after them.
#pragma once

#include <optional>
#include <string>
#include <unordered_map>
#include <vector>

#include "base/date.hpp"
#include "base/id.hpp"
#include "language/equipment.hpp"
#include "language/method.hpp"
#include "quantity/dimension.hpp"
#include "quantity/exact.hpp"
#include "science/composition.hpp"
#include "source/source.hpp"

namespace maslin::language {

struct UnitTag {};
struct ClassTag {};
struct IngredientTag {};
struct FrameworkTag {};
struct BasketTag {};
struct KitchenTag {};
struct BatchTag {};
struct RouteTag {};
using UnitId = Id<UnitTag>;
using ClassId = Id<ClassTag>;
using IngredientId = Id<IngredientTag>;
using FrameworkId = Id<FrameworkTag>;
using BasketId = Id<BasketTag>;
using KitchenId = Id<KitchenTag>;
using BatchId = Id<BatchTag>;
using RouteId = Id<RouteTag>;

// A published or measured figure: a range, where it stands, and where it comes from.
struct Figure {
  Bounds value;
  Span span;
  std::string origin;  // empty: the sources of the whole entry
};

struct Unit {
  std::string name;
  Dimension dimension;
  Rational factor;               // how many base units one of it is
  std::vector<UnitId> could_be;  // a bare `pint`: the units that are meant by it; else empty
  Span span;
};

// Which end of an uncertain figure a condition looks at.
enum class End : std::uint8_t { either, lowest, highest };

enum class Property : std::uint8_t {
  ph,
  acidity,         // titratable, as acetic acid, mass share
  acetic_acid,     // mass share
  sugars,          // mass share
  soluble_solids,  // mass share
  total_solids,    // mass share
  water,           // mass share
  salt,            // mass share
  water_activity,
  weight,
  stability_index,
};
std::string_view name_of(Property property);
std::vector<std::string_view> property_names();
std::optional<Property> property_named(std::string_view name);
// Figures with a scale of their own (a pH, an activity, points); all others are shares by weight.
bool has_own_scale(Property property);

enum class Comparison : std::uint8_t { at_most, at_least };

struct Condition {
  Property property{};
  End end = End::either;
  Comparison comparison{};
  bool strict = false;  // the line itself is outside
  Rational value;
  Span span;
};

struct Class {
  std::string name;
  std::vector<std::string> also;
  std::vector<ClassId> parents;
  std::vector<Condition> conditions;
  IngredientId usually;  // what is meant when nothing of the class is at hand
  Span span;             // of the name
};

enum class RawHazard : std::uint8_t { none_known, unpleasant, unsafe };

struct Ingredient {
  std::string name;
  std::vector<std::string> also;
  std::vector<ClassId> parents;
  science::Composition composition;
  std::optional<Figure> ph;
  std::optional<Figure> edible;          // share of the gross weight
  std::optional<Figure> density;         // g per ml
  std::optional<Figure> piece;           // g
  std::optional<Figure> acidity;         // g per ml, for vinegars
  std::optional<Figure> soluble_solids;  // mass share, where a table has only the total
  std::optional<Figure> total_solids;    // mass share
  // Net strong charge by titration of the ash, mmol of charge per g, that is mol per kg.
  std::optional<Figure> ash_alkalinity;
  std::optional<Figure> pungency;  // Scoville heat units of the dry matter
  RawHazard raw = RawHazard::none_known;
  Duration boil_first;
  std::string raw_reason;
  bool allergens_stated = false;
  std::vector<std::string> allergens;
  bool compound = false;             // sold as a mixture: what is in it stands on its packet
  std::vector<std::string> made_of;  // in descending order, where its entry says so
  std::vector<std::string> notes;
  std::vector<std::string> sources;
  std::string composition_origin;
  Span span;  // of the name
  Span composition_span;
};

// What a slot of a framework takes: an ingredient, or any member of a class, or the named members.
struct Target {
  std::string name;  // as written
  ClassId of_class;
  IngredientId ingredient;
  std::vector<Target> narrowed;  // `as quince, apple`: only these
  Span span;
};

// How small produce is cut, which says how soon heat and acid reach its middle.
struct CutSize {
  std::string text;               // "8 to 10 mm", or as the author says it
  std::optional<Length> at_most;  // where it is a length
  Span span;
};

struct ProduceShare {
  Target target;
  Bounds range;  // of the prepared produce, 0 to 1
  std::optional<Rational> prefer;
  std::optional<CutSize> cut;
  Span span;
  Span range_span;
};

enum class Measured : std::uint8_t { by_weight, by_volume, by_count };

// An amount per kilogram of prepared produce, in g, ml or pieces.
struct Addition {
  Target target;
  Measured measured{};
  Bounds range;
  std::optional<Rational> prefer;
  std::optional<Rational> strength;  // g of acetic acid per ml, where the framework says it
  UnitId unit;                       // as written, for spoons; invalid for counts
  Span span;
  Span range_span;
};

enum class Extent : std::uint8_t { optional, full };

struct Substitution {
  Target donor;
  Target replaced;
  std::size_t addition = 0;  // index of the addition replaced
  Property by{};
  Extent extent = Extent::optional;
  std::optional<Rational> cap;  // share of what is replaced
  std::vector<Target> only;
  Span span;
  Span cap_span;
};

enum class Whole : std::uint8_t {
  none,
  prepared_produce,
  produce_and_water,  // prepared produce, and the water it stands in: of a brine
  finished_product,
  volatile_matter,
  produce_and_sweetener,  // as they are weighed in; only the law of a name asks by it
};

struct Limit {
  std::optional<Property> property;  // or the share of a class
  Target share_of;
  Bounds range;
  bool has_low = false;
  bool has_high = false;
  Whole whole = Whole::none;
  RouteId route;  // whose floor it is; invalid for a limit of the framework's own
  Span claim;     // where the route is claimed
  Span span;
};

enum class Status : std::uint8_t { not_stated, own, traditional, tested };

// How the heat in a jar as it is filled is called where it is read.
inline constexpr std::string_view filling_temperature = "filling temperature";

// A reading that must be in before a batch counts as kept by a route. Without a bound it is only
// that it was looked at: a seal.
struct ToRead {
  std::string figure;
  Bounds range;  // base units of its dimension
  bool has_low = false;
  bool has_high = false;
  Dimension dimension;
  Span span;
};

// What a route does not take on a shelf, and why.
struct Refusal {
  std::vector<Target> targets;
  std::string because;
  Span span;
};

// A row of a tested table: minutes in boiling water for one product in jars up to a size, band by
// band of altitude. Never scaled, never for a larger jar. A product may have rows for several
// sizes.
struct Process {
  struct Step {
    Duration time;
    std::optional<Length> up_to;  // altitude, itself included; nothing for all above
  };
  std::string product;
  std::vector<Step> steps;  // heights rise, times never fall
  Volume largest_jar;
  std::string source;  // empty: the sources of the route
  Span span;
};

// The amounts a row of that table was tested with. Ranges where the source measures by the cup and
// a cup of produce was turned into grams; of acid never less than the source has.
struct Recipe {
  std::string product;
  std::vector<ProduceShare> shares;
  std::vector<Addition> additions;
  std::optional<Length> headspace;
  std::vector<std::string> notes;
  std::vector<std::string> sources;
  Span span;
};

// How far below the rim a route has jars filled.
struct HeadspaceFloor {
  Range<Length> range;
  Span span;
};

// What a route asks of a liquor that covers what is packed as it is.
struct LiquorFloor {
  Rational acidity;  // g of acetic acid in a ml of what is poured, sugar and salt not counted
  Span span;
};

// A way of keeping, with floors that no framework loosens.
struct Route {
  std::string name;
  std::string place;          // where its rules hold; empty: not of one place
  std::optional<Date> as_of;  // since when its rules hold, or the year they are of
  std::vector<Limit> floors;
  std::vector<ToRead> readings;
  std::vector<Refusal> refusals;
  std::vector<Process> processes;
  std::vector<Recipe> recipes;  // one a product, at the most
  std::optional<LiquorFloor> liquor;
  std::optional<HeadspaceFloor> headspace;
  std::vector<std::string> notes;
  std::vector<std::string> sources;
  Span span;  // of the name
};

// What the law of a place asks of what bears a name.
struct Standard {
  std::string name;
  std::string place;
  std::optional<Date> as_of;  // since when it asks that; nothing: not said
  std::string reserved_name;  // empty: it reserves none
  std::vector<Limit> limits;
  std::vector<std::string> notes;
  std::vector<std::string> sources;
  Span span;  // of the name
};

struct RouteClaim {
  RouteId route;
  std::string product;  // of the tested table of the route; empty: none is claimed
  Span product_span;
  Span span;
};

// `sharper { vinegar * 1.10 }`: a variant of what is added. Limits stay as they are.
struct Adjustment {
  std::size_t addition = 0;
  Rational factor;
  Span span;
};
struct Variant {
  std::string name;
  std::vector<Adjustment> adjustments;
  Span span;
};

// What the author says of an opened jar.
struct OnceOpened {
  std::optional<Range<Duration>> within;  // nothing: no time is given
  Span span;
};

struct Framework {
  std::string name;
  std::string title;
  Rational version;
  Status status = Status::not_stated;
  std::string status_source;
  Span status_span;   // of its own statement; of no file where it has none
  std::string taste;  // the variant it is made to; empty: as it stands
  std::vector<ProduceShare> shares;
  std::vector<Addition> additions;
  std::vector<Substitution> substitutions;
  std::vector<Limit> limits;  // the floors of its routes among them
  std::vector<RouteClaim> routes;
  std::vector<Variant> variants;
  Method method;
  std::optional<Range<Duration>> mature;
  std::optional<Range<Duration>> best_within;
  std::optional<OnceOpened> once_opened;
  std::vector<std::string> notes;
  std::vector<std::string> sources;
  FrameworkId refines;
  Span span;  // of the name
  Span produce_span;
  bool poisoned = false;  // something in it could not be understood, and was reported
};

// Where something in the pan comes from.
enum class Origin : std::uint8_t {
  basket,
  store,
  to_buy,   // named in the basket as something to buy
  to_have,  // asked for by the framework, and not listed anywhere
};

enum class WeighedAs : std::uint8_t { gross, prepared, drained };

// A line of a basket or a store.
struct Line {
  IngredientId ingredient;
  std::string name;                // as written
  std::optional<Rational> weight;  // g, of `basis`; nothing for a line that is only to buy
  WeighedAs basis = WeighedAs::prepared;
  std::optional<Rational> trim;  // share of the gross weight cut away
  Rational spoiled;              // g, gross
  Rational keep_back;            // g, of `basis`
  bool use_first = false;
  bool sulphited = false;
  bool to_buy = false;
  std::optional<Rational> at_most;  // g that may be bought, as in the shop
  std::optional<Rational> price;    // per g as in the shop
  std::optional<Rational> pack;     // g
  std::optional<Rational> acidity;  // g per ml
  std::string from;
  bool counted = false;  // `3 onions`: the amount and the name are one
  std::string estimate;  // how a count or a volume became a weight; empty if weighed
  Span span;
  Span amount_span;
  Span at_most_span;  // of the weight behind `at most`
};

struct Basket {
  std::string name;
  std::vector<Line> lines;
  Span span;
  Span close;  // where another line could be written: right before the closing brace
  bool close_on_own_line = false;
  bool poisoned = false;
};

struct Kitchen {
  std::string name;
  std::optional<Mass> scale_step;
  std::optional<Mass> scale_limit;
  std::optional<Volume> spoon_step;
  std::vector<Line> store;
  Span store_close;  // as for a basket; of no file when there is no store
  std::optional<Pan> pan;
  std::optional<Hob> hob;
  std::optional<Length> altitude;
  std::vector<JarStock> jars;
  std::string law;                // the name of one in `law.hpp`; empty: not said
  std::optional<Date> law_as_of;  // the day its law is wanted of; nothing: the latest
  Span span;
  bool poisoned = false;
};

// A figure read of a boil.
struct Measurement {
  std::string figure;
  Rational value;  // base units
  Dimension dimension;
  bool with_pan = false;           // the pan stood on the scales with it
  std::string means;               // "meter"; empty: not said
  std::optional<Rational> off_by;  // of what it was read with, as the cook states it
  std::vector<Rational> buffers;   // pH that a meter was set with
  Span span;
};

struct Reading {
  std::optional<Duration> after_filling;  // nothing: while it boils, or not said
  std::vector<Measurement> figures;
  bool seals_looked_at = false;
  bool all_sealed = false;
  Span span;
};

struct Boil {
  long number = 1;
  std::vector<Line> used;  // a weight of nothing: none of it was
  std::vector<Reading> readings;
  std::vector<JarStock> filled;
  std::optional<Temperature> filled_at;
  Span span;
};

// What was made, boil by boil, as it was written down.
struct Batch {
  std::string name;
  FrameworkId framework;
  std::optional<Rational> version;  // of the framework; nothing: not said
  std::vector<Boil> boils;
  Span span;  // of the name
  Span version_span;
  bool poisoned = false;
};

struct Program {
  std::vector<Unit> units;
  std::vector<Class> classes;
  std::vector<Ingredient> ingredients;
  std::vector<Framework> frameworks;
  std::vector<Basket> baskets;
  std::vector<Kitchen> kitchens;
  std::vector<Batch> batches;
  std::vector<Route> routes;
  std::vector<Standard> standards;
  std::vector<std::vector<bool>> classes_of;  // for each ingredient, whether it is of each class
  // How many of the frameworks are the library's: the build has checked those.
  std::size_t library_frameworks = 0;
  std::size_t library_classes = 0;
  std::size_t library_routes = 0;
  std::size_t library_standards = 0;
  // Those that the user's files declare, some of them in the place of the library's.
  std::vector<IngredientId> own_ingredients;

  const Unit& operator[](UnitId id) const { return units[id.index]; }
  const Class& operator[](ClassId id) const { return classes[id.index]; }
  const Ingredient& operator[](IngredientId id) const { return ingredients[id.index]; }
  const Framework& operator[](FrameworkId id) const { return frameworks[id.index]; }
  const Basket& operator[](BasketId id) const { return baskets[id.index]; }
  const Kitchen& operator[](KitchenId id) const { return kitchens[id.index]; }
  const Batch& operator[](BatchId id) const { return batches[id.index]; }
  const Route& operator[](RouteId id) const { return routes[id.index]; }
};

}  // namespace maslin::language
