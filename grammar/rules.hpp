// SPDX-License-Identifier: Apache-2.0
// The rules of maslin.peg for the parser generator, in the same order and under the same names:
// lower_case makes a node, CamelCase none. A test holds the two files together.
#pragma once

#include <tao/pegtl.hpp>

#include "grammar/characters.hpp"

namespace maslin::grammar {

namespace peg = tao::pegtl;
using peg::at, peg::eof, peg::not_at, peg::opt, peg::plus, peg::seq, peg::sor, peg::star;

// ---- Tokens -----------------------------------------------------------------------------------

struct Letter : characters::Letter {};
struct Mark : characters::Mark {};
struct WordCharacter : sor<peg::one<'-', '\''>, peg::digit, peg::utf8::one<0x2019>, Letter, Mark> {
};
struct word : seq<Letter, star<WordCharacter>> {};

struct newline : seq<opt<peg::one<'\r'>>, peg::one<'\n'>> {};
struct space : plus<peg::utf8::one<' ', '\t', 0x00A0>> {};
struct ToLineEnd : star<not_at<newline>, peg::utf8::any> {};
struct documentation : seq<peg::two<'#'>, ToLineEnd> {};
struct comment : seq<not_at<peg::two<'#'>>, peg::one<'#'>, ToLineEnd> {};
struct byte_order_mark : peg::utf8::one<0xFEFF> {};

struct Digits : plus<peg::digit> {};
struct Decimal : seq<Digits, opt<peg::one<'.'>, Digits>> {};
struct Vulgar : peg::utf8::one<0xBD, 0x2153, 0x2154, 0xBC, 0xBE, 0x2155, 0x2156, 0x2157, 0x2158,
                               0x2159, 0x215A, 0x215B, 0x215C, 0x215D, 0x215E> {};
struct number : sor<seq<Digits, plus<peg::one<' '>>, Digits, peg::one<'/'>, Digits>,
                    seq<Digits, peg::one<'/'>, Digits>, seq<Decimal, opt<peg::one<' '>>, Vulgar>,
                    Vulgar, Decimal> {};
struct bad_number : sor<seq<peg::one<'-'>, opt<peg::one<' '>>, Decimal>,
                        seq<Digits, peg::one<','>, Digits, star<peg::one<',', '.'>, Digits>>,
                        seq<peg::one<'.'>, Digits>,
                        seq<Decimal, peg::one<'e', 'E'>, opt<peg::one<'-', '+'>>, Digits,
                            not_at<WordCharacter>>> {};
struct Number : sor<bad_number, number> {};

struct StringCharacter : seq<not_at<peg::one<'"', '\r', '\n'>>, peg::utf8::any> {};
struct unclosed_string : seq<peg::one<'"'>, star<StringCharacter>> {};
struct CurlyOpen : peg::utf8::one<0x201C, 0x201E, 0xAB> {};
struct CurlyClose : peg::utf8::one<0x201D, 0x201C, 0xBB, '"'> {};
struct curly_string
    : seq<CurlyOpen, star<not_at<sor<CurlyOpen, CurlyClose, peg::one<'\r', '\n'>>>, peg::utf8::any>,
          CurlyClose> {};
struct string : seq<peg::one<'"'>, star<StringCharacter>, peg::one<'"'>> {};
struct Text : sor<string, curly_string, unclosed_string> {};

// A word that means something where it stands: "word" in maslin.peg.
template <class Characters>
struct Keyword;
template <char... Cs>
struct Keyword<peg::string<Cs...>> : seq<peg::string<Cs...>, not_at<WordCharacter>> {
  static constexpr char text[] = {Cs..., '\0'};
};
// Characters that mean something: 'text' in maslin.peg.
template <class Characters>
struct Symbol;
template <char... Cs>
struct Symbol<peg::string<Cs...>> : peg::string<Cs...> {
  static constexpr char text[] = {Cs..., '\0'};
};
#define K(text) Keyword<TAO_PEGTL_STRING(text)>
#define S(text) Symbol<TAO_PEGTL_STRING(text)>

struct semicolon : peg::one<';'> {};
struct Break : star<sor<space, comment, documentation, newline, semicolon>> {};
struct Gap : opt<space> {};
struct Comma : seq<Gap, S(","), star<sor<space, comment, newline>>> {};
struct CommaOrGap : sor<Comma, Gap> {};

// ---- Names and quantities ---------------------------------------------------------------------

struct Reserved : sor<K("of"), K("for"), K("by"), K("in"), K("as"), K("is"), K("at"), K("to"),
                      K("from"), K("where"), K("refines"), K("until"), K("only"), K("version")> {};
struct NameWord : seq<not_at<Reserved>, word> {};
struct quoted_name : seq<Text> {};
struct name : sor<quoted_name, seq<NameWord, star<Gap, NameWord>>> {};
struct NameList : seq<name, star<Comma, name>> {};

struct AfterQuantity
    : sor<K("prefer"), K("gross"), K("prepared"), K("drained"), K("per"), K("and"), K("acidity"),
          K("across"), K("after"), K("with"), K("covered"), K("uncovered"), K("trim"), K("spoiled"),
          K("use"), K("keep"), K("sulphited"), K("packs"), K("full"), K("optional"), K("up"),
          K("also")> {};
struct UnitWord : seq<not_at<sor<Reserved, AfterQuantity>>, word> {};
struct unit_system : sor<K("US"), K("imp")> {};
struct unit : sor<S("%"), S("°C"), S("°F"), seq<unit_system, Gap, K("fl"), Gap, K("oz")>,
                  seq<unit_system, Gap, UnitWord>, seq<K("fl"), Gap, K("oz")>, UnitWord> {};
struct quantity : seq<Number, opt<Gap, unit, opt<Gap, number, Gap, unit>>> {};
struct whole : seq<K("of"), Gap, name> {};
struct per : seq<K("per"), Gap, sor<quantity, unit>> {};

struct expression;
struct BracketedContent : seq<S("("), Gap, expression, Gap, S(")")> {};
struct bracketed : seq<characters::Nested<BracketedContent>> {};
struct Operand : sor<quantity, bracketed> {};
struct measure : seq<Operand, opt<Gap, per>, opt<Gap, whole>> {};
struct at_least : seq<K("at"), Gap, K("least"), Gap, measure> {};
struct at_most : seq<K("at"), Gap, K("most"), Gap, measure> {};
struct dots : seq<S(".."), not_at<peg::one<'.'>>> {};
struct dash : sor<S("..."), S("…"), S("-"), S("–"), S("—")> {};
struct range : sor<at_least, at_most, seq<measure, opt<Gap, sor<dots, dash>, Gap, measure>>> {};

// ---- Statements and what fits none ------------------------------------------------------------

struct LineEnd : sor<comment, documentation, newline, peg::one<';', '}'>, eof> {};
struct Ending : at<sor<LineEnd, seq<peg::one<','>, Gap, LineEnd>>> {};
struct StatementEnd : seq<Gap, Ending> {};
struct missing_brace : peg::success {};
struct BlockEnd : sor<S("}"), missing_brace> {};
struct stray_brace : S("}") {};
struct unknown : peg::utf8::any {};
struct SkippedToken : sor<space, comment, documentation, Number, Text, word, unknown> {};
struct skipped_block;
struct SkippedContent
    : seq<S("{"), star<not_at<peg::one<'}'>>, sor<skipped_block, newline, SkippedToken>>,
          BlockEnd> {};
struct skipped_block : characters::Nested<SkippedContent> {};
struct Title : sor<Text, name> {};
struct version;
struct TopStart : seq<sor<K("framework"), K("ingredient"), K("kitchen"), K("basket"), K("batch")>,
                      opt<Gap, Title>, opt<Gap, sor<K("refines"), K("is"), K("of")>, Gap, NameList>,
                      opt<Gap, version>, Gap, S("{")> {};
struct SectionStart : seq<sor<K("produce"), seq<K("per"), Gap, sor<K("kilogram"), K("kg")>>,
                              K("substitute"), K("limits"), K("method"), K("taste")>,
                          Gap, S("{")> {};
struct Enclosing : sor<SectionStart, TopStart> {};

// A statement goes on after a comma at the end of a line, and so does what is skipped of it: else
// each line of a long list would be tried as the beginning of the rest.
struct Continuation : seq<at<peg::one<','>>, unknown, star<sor<space, comment, newline>>,
                          not_at<sor<documentation, peg::one<';', '}'>, eof, Enclosing>>> {};
struct DanglingComma : seq<at<peg::one<','>>, unknown, at<Gap, LineEnd>> {};
struct BadToken : seq<not_at<sor<newline, peg::one<';', '}'>>>,
                      sor<skipped_block, Continuation, SkippedToken>> {};
struct bad_item : sor<DanglingComma, plus<BadToken>> {};

template <class Stop, class Entry>
struct Block : seq<S("{"), Break, star<not_at<Stop>, Entry, Break>, BlockEnd> {};

struct note : seq<K("note"), Gap, Text> {};
struct source : seq<K("source"), Gap, Text, star<Comma, Text>> {};
struct origin : seq<K("from"), Gap, Text> {};
struct also : seq<K("also"), Gap, NameList> {};

// ---- The file's own items ---------------------------------------------------------------------

struct use : seq<K("use"), Gap, Text> {};
struct factor : sor<measure, name> {};
struct times : S("*") {};
struct divide : S("/") {};
struct term : seq<factor, star<Gap, sor<times, divide>, Gap, factor>> {};
struct add_sign : S("+") {};
struct minus : S("-") {};
struct expression : seq<term, star<Gap, sor<add_sign, minus>, Gap, term>> {};
struct let : seq<K("let"), Gap, name, Gap, S("="), Gap, expression> {};

struct unit_value : seq<S("="), Gap, quantity> {};
struct unit_kind : seq<K("is"), Gap, name> {};
struct unit_choice
    : seq<K("could"), Gap, K("be"), Gap, unit, star<Comma, not_at<K("also")>, unit>> {};
struct unit_declaration
    : seq<K("unit"), Gap, unit, Gap, sor<unit_value, unit_kind, unit_choice>, opt<Comma, also>> {};

struct figure : seq<NameWord, star<Gap, NameWord>> {};
struct comparison : sor<S("<="), S(">="), S("≤"), S("≥"), S("<"), S(">"), S("=")> {};
struct condition : seq<figure, Gap, comparison, Gap, measure> {};
struct where : seq<K("where"), Gap, condition, star<Gap, K("and"), Gap, condition>> {};
struct parents : seq<K("is"), Gap, NameList> {};
struct usually : seq<K("usually"), Gap, name> {};
struct ClassEntry : sor<seq<sor<usually, also, note>, StatementEnd>, bad_item> {};
struct class_block : Block<TopStart, ClassEntry> {};
struct class_declaration
    : seq<K("class"), Gap, name, opt<Gap, parents>, opt<Gap, where>, opt<Gap, class_block>> {};

// ---- Ingredients ------------------------------------------------------------------------------

struct component : seq<name, Gap, range> {};
struct composition : seq<K("composition"), Gap, component, star<Comma, sor<origin, component>>> {};
struct property : sor<seq<K("soluble"), Gap, K("solids")>, seq<K("total"), Gap, K("solids")>,
                      seq<K("acetic"), Gap, K("acid")>, seq<K("dry"), Gap, K("weight")>,
                      seq<K("ash"), Gap, K("alkalinity")>, K("sugars"), K("acidity"), K("pH"),
                      K("edible"), K("density"), K("piece"), K("weight"), K("pungency")> {};
struct property_value : seq<property, Gap, range> {};
struct figures : seq<property_value, star<Comma, sor<origin, property_value>>> {};
struct boil_first : seq<K("boil"), Gap, K("at"), Gap, K("least"), Gap, quantity> {};
struct because : seq<K("because"), Gap, Text> {};
struct raw : seq<K("raw"), Gap, sor<K("unpleasant"), K("unsafe")>, opt<Comma, boil_first>,
                 opt<Comma, because>> {};
struct none : seq<K("none")> {};
struct not_stated : seq<K("not"), Gap, K("stated")> {};
struct allergen : seq<K("allergen"), Gap, sor<none, not_stated, NameList>> {};
struct made_of : seq<K("made"), Gap, K("of"), Gap, NameList> {};
struct compound : seq<K("compound")> {};
struct IngredientEntry
    : sor<seq<sor<also, composition, figures, raw, allergen, made_of, compound, note, source>,
              StatementEnd>,
          bad_item> {};
struct ingredient_block : Block<TopStart, IngredientEntry> {};
struct ingredient : seq<K("ingredient"), Gap, name, opt<Gap, parents>, Gap, ingredient_block> {};

// ---- Frameworks -------------------------------------------------------------------------------

struct narrowing : seq<K("as"), Gap, NameList> {};
struct prefer : seq<K("prefer"), Gap, measure> {};
struct strength : seq<measure, Gap, K("acidity")> {};

struct cut : seq<K("cut"), Gap, sor<Text, range>> {};

struct ShareClauses : sor<seq<CommaOrGap, cut, opt<CommaOrGap, prefer>>,
                          seq<opt<CommaOrGap, prefer>, opt<CommaOrGap, cut>>> {};
struct share : seq<name, opt<Gap, narrowing>, Gap, range, ShareClauses> {};
struct ProduceEntry : sor<seq<share, StatementEnd>, bad_item> {};
struct produce_block : Block<Enclosing, ProduceEntry> {};
struct produce : seq<K("produce"), Gap, produce_block> {};

struct addition
    : seq<name, opt<Gap, narrowing>, Gap, range, opt<CommaOrGap, prefer>, opt<Comma, strength>> {};
struct AdditionEntry : sor<seq<addition, StatementEnd>, bad_item> {};
struct addition_block : Block<Enclosing, AdditionEntry> {};
struct per_kilogram : seq<K("per"), Gap, sor<K("kilogram"), K("kg")>, Gap, addition_block> {};

struct extent : sor<K("full"), K("optional")> {};
struct cap : seq<K("up"), Gap, K("to"), Gap, measure> {};
struct only : seq<K("only"), Gap, NameList> {};
struct substitution : seq<name, Gap, K("for"), Gap, name, Gap, K("by"), Gap, property,
                          opt<CommaOrGap, extent>, opt<CommaOrGap, cap>, opt<CommaOrGap, only>> {};
struct SubstituteEntry : sor<seq<substitution, StatementEnd>, bad_item> {};
struct substitute_block : Block<Enclosing, SubstituteEntry> {};
struct substitute : seq<K("substitute"), Gap, substitute_block> {};

struct limit : seq<figure, Gap, sor<seq<comparison, Gap, measure>, range>> {};
struct tested_product : seq<K("for"), Gap, name> {};
struct claimed_process : seq<K("process"), Gap, tested_product> {};
struct route_claim : seq<K("route"), Gap, name, opt<Comma, claimed_process>> {};
struct LimitEntry : sor<seq<sor<route_claim, limit>, StatementEnd>, bad_item> {};
struct limits_block : Block<Enclosing, LimitEntry> {};
struct limits : seq<K("limits"), Gap, limits_block> {};

struct rest : seq<K("the"), Gap, K("rest"), Gap, K("of"), Gap, name> {};
struct everything : seq<K("all"), Gap, name> {};
struct portion : seq<Number, Gap, K("of"), Gap, name> {};
struct Part : sor<rest, everything, portion, name> {};
struct Parts : seq<Part, star<Comma, Part>> {};
struct lasting : seq<K("for"), Gap, range> {};
struct losing : seq<K("losing"), Gap, range> {};
struct salt_share : seq<K("at"), Gap, measure> {};
struct soak : seq<K("soak"), Gap, Parts, Gap, K("in"), Gap, Part, opt<Gap, lasting>> {};
struct macerate : seq<K("macerate"), Gap, Parts, Gap, K("in"), Gap, Part, opt<Gap, lasting>> {};
struct dry_salt : seq<K("salt"), Gap, Parts, Gap, sor<seq<K("in"), Gap, Part>, salt_share>,
                      opt<Gap, lasting>, opt<Comma, losing>> {};
struct brine : seq<K("brine"), Gap, Parts, Gap, salt_share, opt<Gap, lasting>, opt<Comma, losing>> {
};
struct add : seq<K("add"), Gap, Parts> {};
struct pack : seq<K("pack"), Gap, Parts> {};
struct take_out : seq<K("take"), Gap, K("out"), Gap, Parts> {};
struct keeping : seq<K("keeping"), Gap, range> {};
struct strain : seq<K("strain"), opt<Gap, lasting>, opt<CommaOrGap, keeping>> {};
struct lid : sor<K("covered"), K("uncovered")> {};
struct until : seq<K("until"), Gap, Text> {};
struct simmer
    : seq<sor<K("simmer"), K("boil")>, Gap, range, opt<CommaOrGap, lid>, opt<CommaOrGap, until>> {};
struct reduce : seq<K("reduce"), Gap, K("to"), Gap, figure, Gap, measure, opt<Comma, at_least>,
                    opt<CommaOrGap, until>> {};
struct kept_at : seq<K("at"), Gap, range> {};
struct ferment : seq<K("ferment"), Gap, range, opt<Gap, kept_at>, opt<CommaOrGap, until>> {};
struct StepEntry : sor<seq<sor<soak, macerate, dry_salt, brine, add, pack, take_out, strain, simmer,
                               reduce, ferment>,
                           StatementEnd>,
                       bad_item> {};
struct step_block : Block<Enclosing, StepEntry> {};
struct day_before
    : seq<sor<K("day"), seq<Number, Gap, K("days")>>, Gap, K("before"), Gap, step_block> {};
struct stage : seq<K("stage"), Gap, name, Gap, step_block> {};
struct hot : seq<K("hot")> {};
struct filling_heat : seq<K("at"), Gap, quantity> {};
struct headspace : seq<K("headspace"), Gap, quantity> {};
struct fill : seq<K("fill"), opt<Gap, hot>, opt<Gap, filling_heat>, opt<Comma, headspace>> {};
struct MethodEntry : sor<day_before, stage, seq<fill, StatementEnd>, bad_item> {};
struct method_block : Block<Enclosing, MethodEntry> {};
struct method : seq<K("method"), Gap, method_block> {};

struct adjustment : seq<name, Gap, S("*"), Gap, Number> {};
struct VariantEntry : sor<seq<adjustment, StatementEnd>, bad_item> {};
struct variant_block : Block<Enclosing, VariantEntry> {};
struct variant : seq<name, Gap, variant_block> {};
struct TasteEntry : sor<variant, bad_item> {};
struct taste_block : Block<Enclosing, TasteEntry> {};
struct taste : seq<K("taste"), Gap, taste_block> {};

struct title : seq<K("title"), Gap, Text> {};
struct version : seq<K("version"), Gap, Number> {};
struct status
    : seq<K("status"), Gap, sor<K("own"), K("traditional"), K("tested")>, opt<Gap, Text>> {};
struct basis : seq<K("basis"), Gap, name> {};
struct mature : seq<K("mature"), Gap, range> {};
struct best_within : seq<K("best"), Gap, K("within"), Gap, range> {};
struct once_opened
    : seq<K("once"), Gap, K("opened"), Gap, K("keep"), Gap, K("cold"), opt<Comma, range>> {};
struct FrameworkEntry
    : sor<seq<sor<title, version, status, basis, mature, best_within, once_opened, note, source>,
              StatementEnd>,
          produce, per_kilogram, substitute, limits, method, taste, bad_item> {};
struct framework_block : Block<TopStart, FrameworkEntry> {};
struct refines : seq<K("refines"), Gap, name> {};
struct framework : seq<K("framework"), Gap, name, opt<Gap, refines>, Gap, framework_block> {};

// ---- Baskets and kitchens ---------------------------------------------------------------------

struct weighed_as : sor<K("gross"), K("prepared"), K("drained")> {};
struct amount : seq<quantity, opt<Gap, weighed_as>> {};
struct to_buy : seq<K("to"), Gap, K("buy")> {};
struct counted : seq<Number, Gap, name> {};
struct trim : seq<K("trim"), Gap, measure> {};
struct spoiled : seq<K("spoiled"), Gap, measure> {};
struct use_first : seq<K("use"), Gap, K("first")> {};
struct keep_back : seq<K("keep"), Gap, K("back"), Gap, measure> {};
struct sulphited : seq<K("sulphited")> {};
struct price : seq<K("at"), Gap, Number, Gap, per> {};
struct packs : seq<K("packs"), Gap, K("of"), Gap, quantity> {};
struct Clause : sor<trim, spoiled, use_first, keep_back, sulphited, to_buy, at_most, at_least,
                    price, packs, strength, origin> {};
struct basket_line
    : seq<sor<counted, seq<name, Gap, sor<to_buy, amount>>>, star<CommaOrGap, Clause>> {};
struct BasketEntry : sor<seq<basket_line, StatementEnd>, bad_item> {};
struct basket_block : Block<TopStart, BasketEntry> {};
struct basket : seq<K("basket"), opt<Gap, Title>, Gap, basket_block> {};

struct across : seq<quantity, Gap, K("across")> {};
struct weighs : seq<K("weighs"), Gap, quantity> {};
struct material : seq<NameWord, star<Gap, NameWord>> {};
struct pan : seq<K("pan"), Gap, quantity, star<Comma, sor<across, weighs, material>>> {};
struct weighed_twice : seq<K("lost"), Gap, quantity, Gap, K("in"), Gap, quantity> {};
struct hob : seq<K("hob"), Gap, quantity, star<Comma, sor<weighed_twice, material>>> {};
struct altitude : seq<K("altitude"), Gap, quantity> {};
struct scale_limit : seq<K("up"), Gap, K("to"), Gap, quantity> {};
struct scales : seq<K("scales"), Gap, K("to"), Gap, quantity, opt<CommaOrGap, scale_limit>> {};
struct spoons : seq<K("spoons"), Gap, K("to"), Gap, quantity> {};
struct jar_price : seq<K("at"), Gap, Number, Gap, K("each")> {};
struct jar_count : seq<Number, Gap, K("of"), Gap, quantity, opt<CommaOrGap, jar_price>> {};
struct jars : seq<K("jars"), Gap, jar_count, star<Comma, jar_count>> {};
struct store : seq<K("store"), Gap, basket_block> {};
struct date : seq<Digits, peg::one<'-'>, Digits, peg::one<'-'>, Digits> {};
struct as_of : seq<K("as"), Gap, K("of"), Gap, sor<date, Number>> {};
struct law : seq<K("law"), Gap, Text, opt<Gap, as_of>> {};
struct KitchenEntry
    : sor<seq<sor<pan, hob, altitude, scales, spoons, jars, law>, StatementEnd>, store, bad_item> {
};
struct kitchen_block : Block<TopStart, KitchenEntry> {};
struct kitchen : seq<K("kitchen"), opt<Gap, Title>, Gap, kitchen_block> {};

// ---- Standards, routes, batches ---------------------------------------------------------------

struct reserved_name : seq<K("reserved"), Gap, K("name"), Gap, name> {};
struct to_read : seq<K("read"), Gap, figure, opt<Gap, sor<seq<comparison, Gap, measure>, range>>> {
};
struct refusal
    : seq<K("refuse"), Gap, name, star<Comma, not_at<K("because")>, name>, opt<Comma, because>> {};
struct up_to_altitude : seq<K("up"), Gap, K("to"), Gap, quantity> {};
struct process_step : seq<quantity, Gap, sor<up_to_altitude, K("above")>> {};
struct largest_jar : seq<K("jars"), Gap, K("up"), Gap, K("to"), Gap, quantity> {};
struct process : seq<K("process"), Gap, tested_product, plus<Comma, process_step>, Comma,
                     largest_jar, opt<Comma, origin>> {};
struct RecipeEntry
    : sor<produce, per_kilogram, seq<sor<headspace, note, source>, StatementEnd>, bad_item> {};
struct recipe_block : Block<TopStart, RecipeEntry> {};
struct recipe : seq<K("recipe"), Gap, tested_product, Gap, recipe_block> {};
struct RuleEntry
    : sor<recipe,
          seq<sor<reserved_name, to_read, refusal, process, source, note, limit>, StatementEnd>,
          bad_item> {};
struct rule_block : Block<TopStart, RuleEntry> {};
struct in_place : seq<K("in"), Gap, Text> {};
struct standard : seq<K("standard"), Gap, name, Gap, in_place, opt<Gap, as_of>, Gap, rule_block> {};
struct route : seq<K("route"), Gap, name, opt<Gap, in_place>, opt<Gap, as_of>, Gap, rule_block> {};

struct with_pan : seq<K("with"), Gap, K("pan")> {};
struct meter_error : seq<K("to"), Gap, Number> {};
struct by_means : seq<K("by"), Gap, name, opt<Gap, meter_error>> {};
struct buffers : seq<K("buffers"), Gap, Number, star<Gap, K("and"), Gap, Number>> {};
struct reading_line : seq<figure, Gap, measure, opt<Gap, with_pan>, opt<CommaOrGap, by_means>,
                          opt<CommaOrGap, buffers>> {};
struct seals : seq<K("seal"), Gap, sor<K("all"), seq<Number, Gap, K("of"), Gap, Number>>> {};
struct ReadingEntry : sor<seq<sor<seals, reading_line>, StatementEnd>, bad_item> {};
struct reading_block : Block<TopStart, ReadingEntry> {};
struct reading_time : seq<K("at"), Gap, quantity> {};
struct reading_age : seq<quantity, Gap, K("after"), Gap, K("filling")> {};
struct reading : seq<K("reading"), opt<Gap, sor<reading_time, reading_age>>, Gap, reading_block> {};
struct used : seq<K("used"), Gap, basket_block> {};
struct jars_filled : seq<jar_count, star<Comma, jar_count>> {};
struct FilledEntry : sor<seq<jars_filled, StatementEnd>, bad_item> {};
struct filled_block : Block<TopStart, FilledEntry> {};
struct filled : seq<K("filled"), opt<Gap, filling_heat>, Gap, filled_block> {};
struct BoilEntry : sor<used, reading, filled, seq<note, StatementEnd>, bad_item> {};
struct boil_block : Block<TopStart, BoilEntry> {};
struct boil : seq<K("boil"), Gap, Number, Gap, boil_block> {};
struct BatchEntry : sor<boil, seq<note, StatementEnd>, bad_item> {};
struct batch_block : Block<TopStart, BatchEntry> {};
struct batch
    : seq<K("batch"), Gap, Text, Gap, K("of"), Gap, name, opt<Gap, version>, Gap, batch_block> {};

// ---- The file ---------------------------------------------------------------------------------

struct FileItem : sor<seq<sor<use, let, unit_declaration, class_declaration>, StatementEnd>,
                      ingredient, framework, basket, kitchen, standard, route, batch> {};
struct FileEntry : sor<FileItem, stray_brace, bad_item> {};
struct file : seq<opt<byte_order_mark>, Break, star<FileEntry, Break>> {};

#undef K
#undef S

}  // namespace maslin::grammar
