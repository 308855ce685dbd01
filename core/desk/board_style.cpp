// What the board looks like. Sizes follow the width of the screen, so that one sheet serves a wall and a phone; only logical directions are
// used, so that it also reads from right to left. The card of a racket that is ready has the notch
// of a tag that was torn off; the one that is wanted at the desk has a dashed edge, so that nobody needs the colours.
#include "core/desk/board_page.h"

namespace weavelog {
namespace {

constexpr BoardColour kColours[] = {
    {"ground", "#F4F2EA", "#0F1719"},       {"ink", "#1B2724", "#EEF3F0"},         {"quiet", "#43504B", "#B7C4BE"},
    {"ready-ground", "#12503A", "#BFE9D0"}, {"ready-ink", "#FFFFFF", "#05281A"},   {"desk-ground", "#FFE5A8", "#4E3A00"},
    {"desk-ink", "#3A2700", "#FFF0CB"},     {"work-ground", "#FFFFFF", "#1C282B"}, {"alarm-ground", "#8A1A1A", "#FFB9AE"},
    {"alarm-ink", "#FFFFFF", "#430500"},
};
// 7 : 1 is what WCAG asks at level AAA; a lounge is bright and the screen far away.
constexpr BoardColourPair kPairs[] = {
    {"ink", "ground", 7},           {"quiet", "ground", 7},       {"ready-ink", "ready-ground", 7}, {"desk-ink", "desk-ground", 7},
    {"ink", "work-ground", 7},      {"quiet", "work-ground", 7},  {"alarm-ink", "alarm-ground", 7},
};

constexpr std::string_view kSheet = R"css(
*{box-sizing:border-box;margin:0}
html{font:clamp(1.125rem,.8rem + .85vw,3rem)/1.3 system-ui,"Noto Sans",sans-serif;background:var(--ground);color:var(--ink)}
body{min-block-size:100vh;display:flex;flex-direction:column;padding:clamp(.75rem,2vw,2.5rem);gap:1.1rem}
[hidden]{display:none!important}
header{display:flex;flex-wrap:wrap;align-items:baseline;column-gap:1.2rem;row-gap:.1rem}
h1{font-size:1.7rem;line-height:1.15;overflow-wrap:anywhere}
h2{font-size:1.25rem;line-height:1.2;margin-block-end:.6rem}
.title,.asof,footer,.more,.none,.label{color:var(--quiet)}
.asof{margin-inline-start:auto;font-variant-numeric:tabular-nums}
#stale{background:var(--alarm-ground);color:var(--alarm-ink);padding:.7rem 1rem;border-radius:.4rem;font-size:1.2rem;font-weight:700}
#said,.away{position:absolute;inline-size:1px;block-size:1px;overflow:hidden;clip-path:inset(50%);white-space:nowrap}
main{flex:1;display:grid;gap:1.6rem;align-content:start}
table{display:block}
tbody{display:grid;gap:.55rem}
tr{display:flex;align-items:baseline;column-gap:.7rem;border-radius:.4rem;border:.1rem solid transparent}
th{text-align:start;font-weight:700;font-variant-numeric:tabular-nums;white-space:nowrap}
td{font-variant-numeric:tabular-nums}
.count{font-weight:400;color:var(--quiet);margin-inline-start:.4rem}
.cards tbody{grid-template-columns:repeat(auto-fill,minmax(var(--card),1fr))}
.cards tr{padding-block:.25rem;padding-inline:1rem .6rem;position:relative;flex-wrap:wrap}
.cards tr::before{content:"";position:absolute;inset-inline-start:-.5rem;inset-block-start:calc(50% - .45rem);inline-size:.9rem;block-size:.9rem;border-radius:50%;background:var(--ground)}
.cards th{font-size:2.1rem;line-height:1.25}
.tag .cards{--card:5.6rem}
.initials .cards{--card:9rem}
.ready tr{background:var(--ready-ground);color:var(--ready-ink)}
.ready tr.new{outline:.2rem double var(--ink);outline-offset:.12rem}
.desk tr::before{display:none}
.desk tr{background:var(--desk-ground);color:var(--desk-ink);border:.1rem dashed var(--desk-ink)}
.work tbody{grid-template-columns:repeat(auto-fill,minmax(min(100%,11rem),1fr))}
.work tr{background:var(--work-ground);padding:.3rem .7rem;flex-wrap:wrap}
.work th{font-size:1.35rem;min-inline-size:2.6rem}
.work{position:relative}
.label{position:absolute;inset-block-start:.2rem;inset-inline-end:.7rem}
.work td:last-child{margin-inline-start:auto;text-align:end}
.more,.none{margin-block-start:.5rem}
@media (min-width:60rem){
main{grid-template:auto 1fr/3fr 2fr}
.ready,.desk{grid-column:1}
.work{grid-column:2;grid-row:1/span 2}
.tag .work tbody{grid-template-columns:repeat(auto-fill,minmax(9.5rem,1fr))}
}
)css";

}  // namespace

std::span<const BoardColour> board_colours() { return kColours; }
std::span<const BoardColourPair> board_colour_pairs() { return kPairs; }

const std::string& board_style() {
  static const std::string sheet = [] {
    std::string light, dark;
    for (const BoardColour& colour : kColours) {
      light.append("--").append(colour.name).append(":").append(colour.light).append(";");
      dark.append("--").append(colour.name).append(":").append(colour.dark).append(";");
    }
    return ":root{color-scheme:light dark;" + light + "}\n@media (prefers-color-scheme:dark){:root{" + dark + "}}" + std::string(kSheet);
  }();
  return sheet;
}

}  // namespace weavelog
