// SPDX-License-Identifier: Apache-2.0
#include "report/drawing_boiling.hpp"

#include <fmt/format.h>

#include <algorithm>

#include "plan/weights.hpp"
#include "report/drawing.hpp"

namespace maslin::report {
namespace {

using plan::weight_text;

constexpr double width = 66;
constexpr double height = 31;
constexpr double left = 0.5;
constexpr double right = 29;  // of the field; the weights to stop at stand beside it
constexpr double top = 5;
constexpr double bottom = 25.5;
constexpr double letters_apart = 4.4;

class Curve {
 public:
  Curve(const BoilingDown& boiling, const std::string& id)
      : boiling_(boiling),
        svg_(drawing_in({id, "Weight while boiling down", words(), width, height})) {
    const double least = boiling_.window ? boiling_.window->low.to_double() : stop();
    // Room below the window, as much as a quarter of the way down.
    floor_ = std::max(0.0, least - (most() - least) / 4);
  }

  Element run() {
    field();
    if (boiling_.window) window();
    fall();
    labels();
    return std::move(svg_);
  }

 private:
  double most() const { return boiling_.from.high.to_double(); }
  double stop() const { return boiling_.stop.to_double(); }
  static std::string text(const FinishedMass& mass) { return weight_text(mass.in_base()); }

  double height_of(double grams) const {
    const double whole = most() - floor_;
    const double part = whole > 0 ? std::clamp((most() - grams) / whole, 0.0, 1.0) : 1.0;
    return top + part * (bottom - top);
  }

  std::string from() const {
    const std::string low = weight_text(boiling_.from.low.in_base());
    const std::string high = weight_text(boiling_.from.high.in_base());
    return low == high ? low : low + " to " + high;
  }

  std::string times() const {
    const Rational minute(60);
    return fmt::format("{} to {} min", (boiling_.time->low.in_base() / minute).to_decimal(0),
                       (boiling_.time->high.in_base() / minute).to_decimal(0));
  }

  std::string words() const {
    std::string result = fmt::format("from {} to about {}", from(), text(boiling_.stop));
    if (boiling_.window) {
      result += fmt::format("; the window is {} to {}", text(boiling_.window->low),
                            text(boiling_.window->high));
    }
    if (boiling_.time) result += "; in " + times();
    return result;
  }

  void field() {
    svg_.add(line_between(left, top, left, bottom, 0.3));
    svg_.add(line_between(left, bottom, right, bottom, 0.3));
    svg_.add(letters_at(left, bottom + letters_apart, Anchor::start,
                        boiling_.time ? "boiling " + times() : "boiling, at a steady heat"));
    svg_.add(letters_at(left, top - 1.2, Anchor::start,
                        from() + (boiling_.time ? " at the boil" : " in the pan")));
  }

  void window() {
    const double above = height_of(boiling_.window->high.to_double());
    const double below = height_of(boiling_.window->low.to_double());
    svg_.add(Element("rect")
                 .with("x", left)
                 .with("y", above)
                 .with("width", right - left)
                 .with("height", std::max(below - above, 0.2))
                 .with("fill", "currentColor")
                 .with("fill-opacity", "0.15")
                 .with("stroke", "currentColor")
                 .with("stroke-width", 0.2));
  }

  // Slowly from the most there is, quickly from the least.
  void fall() {
    const double end = right - 4;
    const double least = height_of(boiling_.from.low.to_double());
    svg_.add(line_between(left, top, end, height_of(stop()), 0.9));
    if (!boiling_.time || !boiling_.time->high.is_positive()) return;
    const double quick = (boiling_.time->low / boiling_.time->high).to_double();
    svg_.add(line_between(left, least, left + quick * (end - left), height_of(stop()), 0.9));
  }

  // A weight beside the field, tied to its height in it.
  void label(double grams, double y, const std::string& words, bool strong) {
    constexpr double gap = 4;
    svg_.add(line_between(right, height_of(grams), right + gap - 1, y, 0.2));
    Element letters = letters_at(right + gap, y + letter_height / 3, Anchor::start, words);
    if (strong) letters.with("font-weight", "bold");
    svg_.add(letters);
  }

  void labels() {
    const double middle = std::clamp(height_of(stop()), top + letters_apart, bottom);
    label(stop(), middle, "stop at " + text(boiling_.stop), true);
    if (!boiling_.window) return;
    const auto& [low, high] = *boiling_.window;
    label(high.to_double(), std::min(height_of(high.to_double()), middle - letters_apart),
          "at most " + text(high), false);
    label(low.to_double(), std::max(height_of(low.to_double()), middle + letters_apart),
          "at least " + text(low), false);
  }

  const BoilingDown& boiling_;
  Element svg_;
  double floor_ = 0;  // g at the foot of the field
};

}  // namespace

Element draw_boiling(const BoilingDown& boiling, const std::string& id) {
  return Curve(boiling, id).run();
}

}  // namespace maslin::report
