// SPDX-License-Identifier: Apache-2.0
#include "driver/proofs.hpp"

#include "language/taste.hpp"

namespace maslin {
namespace {

using syntax::Kind;
using syntax::View;

bool is_plain(Kind kind) {
  return kind == Kind::space || kind == Kind::newline || kind == Kind::comment ||
         kind == Kind::documentation || kind == Kind::byte_order_mark;
}

// Tokens with one blank between them, so that what only looks different is the same.
void add_tokens(const View& view, std::string& text) {
  bool has_parts = false;
  for (const View part : view) {
    has_parts = true;
    if (is_plain(part.kind())) {
      if (!text.empty() && text.back() != ' ') text += ' ';
      continue;
    }
    add_tokens(part, text);
  }
  if (!has_parts && !is_plain(view.kind())) text += view.text();
}

bool is_within(const Span& span, const View& view) {
  return span.file == view.span().file && view.span().begin <= span.begin &&
         span.end <= view.span().end;
}

// Who makes it to a taste is not to be refused either.
std::optional<KeptProof::OfTaste> first_taste_not_shown(const language::Program& program,
                                                        const language::Framework& framework) {
  for (std::size_t i = 0; i < framework.variants.size(); ++i) {
    const auto varied = with_taste(framework, framework.variants[i]);
    auto proof = prove::prove(program, varied);
    if (proof.verdict != prove::Verdict::holds) return KeptProof::OfTaste{i, std::move(proof)};
  }
  return std::nullopt;
}

}  // namespace

std::string text_behind(const Session& session, language::FrameworkId id) {
  const language::Program& program = session.program();
  const auto counts = [&](const View& item) {
    if (item.is(Kind::basket) || item.is(Kind::kitchen) || is_plain(item.kind())) return false;
    if (!item.is(Kind::framework)) return true;
    for (language::FrameworkId each = id; each.valid(); each = program[each].refines) {
      if (is_within(program[each].span, item)) return true;
    }
    return false;
  };
  std::string text;
  for (const syntax::SyntaxTree& tree : session.trees()) {
    for (const View item : root(tree)) {
      if (!counts(item)) continue;
      add_tokens(item, text);
      text += '\n';
    }
  }
  return text;
}

const KeptProof& Proofs::of(const Session& session, language::FrameworkId id) {
  const auto [place, is_new] = entries_.try_emplace(text_behind(session, id));
  Entry& entry = place->second;
  entry.asked_for = true;
  if (!is_new) return entry.kept;
  ++made_;
  const language::Program& program = session.program();
  entry.kept.proof = prove::prove(program, program[id]);
  const prove::Verdict verdict = entry.kept.proof.verdict;
  if (verdict == prove::Verdict::breaks || verdict == prove::Verdict::not_shown) {
    entry.kept.mends = prove::find_mends(program, program[id], entry.kept.proof);
  } else if (verdict == prove::Verdict::holds) {
    entry.kept.taste = first_taste_not_shown(program, program[id]);
  }
  return entry.kept;
}

void Proofs::forget_others() {
  for (auto each = entries_.begin(); each != entries_.end();) {
    each = each->second.asked_for ? std::next(each) : entries_.erase(each);
  }
  for (auto& [text, entry] : entries_) entry.asked_for = false;
}

}  // namespace maslin
