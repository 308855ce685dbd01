#include "core/bed/net.h"

#include <Eigen/Cholesky>
#include <algorithm>
#include <cmath>

#include "core/bed/net_parts.h"

namespace weavelog {
namespace {

constexpr int kMostNodes = 40'000;
constexpr int kMostSteps = 60;

/// Half way to the neighbours; at the edge as wide as inwards.
double width_of(const std::vector<BedString>& strings, std::size_t i, double fallback) {
  if (strings.size() == 1) return fallback;
  const double before = i > 0 ? strings[i].at - strings[i - 1].at : strings[i + 1].at - strings[i].at;
  const double after = i + 1 < strings.size() ? strings[i + 1].at - strings[i].at : before;
  return (before + after) / 2;
}

/// Puts an even load of `q` per mm on a piece from c to d: shares to its nodes, and the integral of shear squared in m (per tension).
void spread_over(const NetPiece& piece, double c, double d, double q, double& to_a, double& to_b, double& shear) {
  c = std::max(c, piece.from);
  d = std::min(d, piece.to);
  if (!(d > c)) return;
  const double whole = piece.to - piece.from, length = d - c, left = c - piece.from, total = q * length;
  const double at_b = total * (left + length / 2) / whole;
  const double at_a = total - at_b;
  to_a += at_a;
  to_b += at_b;
  // The shear is at_a up to c, falls by q a mm to -at_b at d, and stays so.
  const double squares = at_a * at_a * left + at_b * at_b * (piece.to - d) + length * (at_a * at_a - at_a * at_b + at_b * at_b) / 3;
  shear += squares / 1000;
}

Fault in_the_air() {
  return {FaultCode::bad_input, "no string lies under this contact", "contact", "give a place within the head and a radius wider than a gap"};
}

}  // namespace

StringNet::StringNet(std::unique_ptr<Parts> parts) : parts_(std::move(parts)) {}
StringNet::~StringNet() = default;
StringNet::StringNet(StringNet&&) noexcept = default;
StringNet& StringNet::operator=(StringNet&&) noexcept = default;

Outcome<StringNet> StringNet::make(const BedLayout& layout, std::span<const NetString> mains, std::span<const NetString> crosses, int pieces) {
  if (mains.size() != layout.mains.size() || crosses.size() != layout.crosses.size())
    return fail(FaultCode::bad_input, "there are not as many strings as places for them", "net", "give one for each main and each cross");
  if (pieces < 1 || pieces > 16) return fail(FaultCode::bad_input, "strings are cut into 1 to 16 pieces between crossings", "net", "give 1 to 16");
  const auto checked = [](const NetString& string) {
    return string.tension > 0 && string.tension < 1e7 && string.elasticity >= 0 && string.elasticity < 1e9 && string.linear_density >= 0 &&
           string.linear_density < 1e3;
  };
  for (const auto& [strings, name] : {std::pair{mains, "main "}, std::pair{crosses, "cross "}})
    for (std::size_t i = 0; i < strings.size(); ++i)
      if (!checked(strings[i]))
        return fail(FaultCode::bad_input, "a string needs a tension above 0", name + std::to_string(i + 1),
                    "give the tension in N, EA in N, linear density in kg/m");
  auto parts = std::make_unique<Parts>(layout);
  std::vector<std::vector<int>> at(layout.mains.size(), std::vector<int>(layout.crosses.size(), -1));
  for (std::size_t i = 0; i < layout.mains.size(); ++i)
    for (std::size_t j = 0; j < layout.crosses.size(); ++j) {
      const BedString &main = layout.mains[i], &cross = layout.crosses[j];
      if (!(main.low < cross.at && cross.at < main.high && cross.low < main.at && main.at < cross.high)) continue;
      at[i][j] = parts->nodes++;
      parts->crossing.push_back({main.at, cross.at});
    }
  if (parts->nodes == 0) return fail(FaultCode::bad_input, "no two strings cross", "net", "give mains and crosses");
  const auto add = [&](const BedString& string, const NetString& kind, bool main, double width,
                       const std::vector<std::pair<double, int>>& crossings) {
    NetLine line{kind, main, string.at, width, string.length() / 1000, {}};
    double from = string.low;
    int node = -1;
    const auto go_to = [&](double to, int next) {
      const double start = from;
      for (int k = 1; k <= pieces; ++k) {
        const double end = k == pieces ? to : start + (to - start) * k / pieces;
        const int b = k == pieces ? next : parts->nodes++;
        line.pieces.push_back({node, b, from, end});
        node = b;
        from = end;
      }
    };
    for (const auto& [place, next] : crossings) go_to(place, next);
    go_to(string.high, -1);
    parts->lines.push_back(std::move(line));
  };
  for (std::size_t i = 0; i < layout.mains.size(); ++i) {
    std::vector<std::pair<double, int>> crossings;
    for (std::size_t j = 0; j < layout.crosses.size(); ++j)
      if (at[i][j] >= 0) crossings.emplace_back(layout.crosses[j].at, at[i][j]);
    add(layout.mains[i], mains[i], true, width_of(layout.mains, i, 2 * layout.head.half_width()), crossings);
  }
  for (std::size_t j = 0; j < layout.crosses.size(); ++j) {
    std::vector<std::pair<double, int>> crossings;
    for (std::size_t i = 0; i < layout.mains.size(); ++i)
      if (at[i][j] >= 0) crossings.emplace_back(layout.mains[i].at, at[i][j]);
    add(layout.crosses[j], crosses[j], false, width_of(layout.crosses, j, 2 * layout.head.half_length()), crossings);
  }
  if (parts->nodes > kMostNodes) return fail(FaultCode::bad_input, "the net has more than 40,000 nodes", "net", "give fewer strings or pieces");
  std::vector<double> tensions;
  for (const NetLine& line : parts->lines) tensions.push_back(line.string.tension);
  parts->factor.compute(parts->stiffness(tensions, true, true));
  if (parts->factor.info() != Eigen::Success) return fail(FaultCode::bad_input, "this net does not hold", "net", "check tensions and positions");
  return StringNet(std::move(parts));
}

NetMatrix StringNet::Parts::stiffness(const std::vector<double>& tensions, bool mains, bool crosses) const {
  std::vector<Eigen::Triplet<double>> entries;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    if (!(lines[i].main ? mains : crosses)) continue;
    for (const NetPiece& piece : lines[i].pieces) {
      const double k = tensions[i] / piece.length();
      if (piece.a >= 0) entries.emplace_back(piece.a, piece.a, k);
      if (piece.b >= 0) entries.emplace_back(piece.b, piece.b, k);
      if (piece.a >= 0 && piece.b >= 0) {
        entries.emplace_back(piece.a, piece.b, -k);
        entries.emplace_back(piece.b, piece.a, -k);
      }
    }
  }
  NetMatrix out(nodes, nodes);
  out.setFromTriplets(entries.begin(), entries.end());
  return out;
}

Outcome<NetLoad> StringNet::Parts::load(const NetContact& contact) const {
  if (!(contact.radius > 0 && contact.radius < 1e4) || !std::isfinite(contact.x + contact.y))
    return fail(FaultCode::bad_input, "a contact needs a radius above 0", "contact", "give it in mm; 20 to 30 is usual for a ball");
  NetLoad out{NetVector::Zero(nodes), std::vector<double>(lines.size()), 0};
  for (std::size_t i = 0; i < crossing.size(); ++i) {
    if (std::hypot(crossing[i].x - contact.x, crossing[i].y - contact.y) > contact.radius * (1 + 1e-12)) continue;
    ++out.loaded;
    if (contact.share == NetContact::Share::crossings) out.nodes[static_cast<Eigen::Index>(i)] = 1;
  }
  double total = out.loaded;
  if (contact.share == NetContact::Share::disc) {
    total = 0;
    for (std::size_t i = 0; i < lines.size(); ++i) {
      const NetLine& line = lines[i];
      const double off = line.at - (line.main ? contact.x : contact.y), middle = line.main ? contact.y : contact.x;
      // The mean chord over the strip of bed that is this string's, so that a string that slips out of the disc takes its load along evenly.
      const double low = std::max(off - line.width / 2, -contact.radius), high = std::min(off + line.width / 2, contact.radius);
      if (!(high > low)) continue;
      const auto area = [&](double u) {
        const double t = std::clamp(u / contact.radius, -1.0, 1.0);
        return contact.radius * contact.radius * (t * std::sqrt(1 - t * t) + std::asin(t));
      };
      const double strip = area(high) - area(low);
      const double half = strip / (high - low) / 2, q = strip / (2 * half);
      for (const NetPiece& piece : line.pieces) {
        double a = 0, b = 0;
        spread_over(piece, middle - half, middle + half, q, a, b, out.local[i]);
        if (piece.a >= 0) out.nodes[piece.a] += a;
        if (piece.b >= 0) out.nodes[piece.b] += b;
        total += a + b;
      }
    }
  }
  if (!(total > 0) || out.nodes.isZero(0)) return fail(in_the_air());
  out.nodes /= total;
  for (double& one : out.local) one /= total * total;
  return out;
}

Outcome<NetDeflection> StringNet::press_lightly(const NetContact& contact) const {
  const auto load = parts_->load(contact);
  if (!load) return fail(load.error());
  const NetVector w = parts_->factor.solve(load->nodes);
  NetDeflection out{1, load->nodes.dot(w), 0, 0, load->loaded, 0};
  out.deepest = w.head(static_cast<Eigen::Index>(parts_->crossing.size())).maxCoeff();
  double mains = 0, crosses = 0;
  for (std::size_t i = 0; i < parts_->lines.size(); ++i) {
    const NetLine& line = parts_->lines[i];
    double work = load->local[i] / line.string.tension;
    out.mean += work;
    for (const NetPiece& piece : line.pieces) {
      const double step = (piece.b >= 0 ? w[piece.b] : 0) - (piece.a >= 0 ? w[piece.a] : 0);
      work += line.string.tension * step * step / piece.length();
    }
    (line.main ? mains : crosses) += work;
  }
  out.mains_share = mains / (mains + crosses);
  return out;
}

namespace {

/// A bed pressed so far: what is stretched, by how much.
struct Pressed {
  NetVector w;
  std::vector<double> tension;  ///< by line; its mean where pieces stretch by themselves
  double energy = 0;            ///< of the strings, less the load's work
};

double step_over(const NetPiece& piece, const NetVector& w) {
  return (piece.b >= 0 ? w[piece.b] : 0) - (piece.a >= 0 ? w[piece.a] : 0);
}

/// One tension of a line or, where `hold`, that of a piece alone.
double tension_of(const NetLine& line, double stretch, double length) {
  return line.string.tension + line.string.elasticity * stretch / length;
}

double stretch_of(const NetPiece& piece, double step) {
  const double l = piece.length();
  return step * step / (std::sqrt(l * l + step * step) + l);  // without cancellation
}

Pressed pressed_to(const std::vector<NetLine>& lines, const NetVector& load, NetVector w, bool hold) {
  Pressed out{std::move(w), {}, 0};
  for (const NetLine& line : lines) {
    double stretch = 0;
    for (const NetPiece& piece : line.pieces) {
      const double one = stretch_of(piece, step_over(piece, out.w));
      stretch += one;
      if (hold) out.energy += (line.string.tension + tension_of(line, one, piece.length())) / 2 * one;
    }
    out.tension.push_back(tension_of(line, stretch, line.length));
    if (!hold) out.energy += (line.string.tension + out.tension.back()) / 2 * stretch;
  }
  out.energy -= load.dot(out.w);
  return out;
}

/// Newton's method for one load; keeps what steps share.
class NetNewton {
 public:
  NetNewton(const std::vector<NetLine>& lines, NetVector load, bool hold) : lines_(lines), load_(std::move(load)), hold_(hold) {}

  /// Takes one step; true if there was nothing left to do.
  bool step(Pressed& state) {
    assemble(state);
    if (residual_.norm() <= 1e-10 * load_.norm()) return true;
    const Eigen::Index n = load_.size();
    NetMatrix stiff(n, n);
    stiff.setFromTriplets(entries_.begin(), entries_.end());
    if (!analysed_) factor_.analyzePattern(stiff);
    analysed_ = true;
    factor_.factorize(stiff);
    NetVector step = factor_.solve(residual_);
    if (!hold_) {  // each line's growing tension adds a matrix of rank one: Woodbury
      const Eigen::MatrixXd z = factor_.solve(slopes_);
      Eigen::MatrixXd small = Eigen::MatrixXd::Identity(slopes_.cols(), slopes_.cols()) + slopes_.transpose() * z;
      const NetVector along = small.ldlt().solve(slopes_.transpose() * step);
      step -= z * along;
    }
    // The energy is convex, so a shortened step always goes down.
    const double slope = -residual_.dot(step);
    double part = 1;
    Pressed next = pressed_to(lines_, load_, state.w + step, hold_);
    while (next.energy > state.energy + 1e-4 * part * slope + 1e-13 * std::abs(state.energy) && part > 1e-6) {
      part /= 2;
      next = pressed_to(lines_, load_, state.w + part * step, hold_);
    }
    state = std::move(next);
    return false;
  }

 private:
  void assemble(const Pressed& state) {
    const Eigen::Index n = load_.size();
    slopes_.setZero(n, hold_ ? 0 : static_cast<Eigen::Index>(lines_.size()));
    entries_.clear();
    residual_ = load_;
    for (std::size_t i = 0; i < lines_.size(); ++i) {
      const NetLine& line = lines_[i];
      const double root = std::sqrt(line.string.elasticity / line.length);
      for (const NetPiece& piece : line.pieces) {
        const double step = step_over(piece, state.w), l = piece.length(), now = std::sqrt(l * l + step * step), slope = step / now;
        const double tension = hold_ ? tension_of(line, stretch_of(piece, step), l) : state.tension[i];
        const double k = tension * l * l / (now * now * now) + (hold_ ? line.string.elasticity / l * slope * slope : 0);
        if (piece.a >= 0) {
          residual_[piece.a] += tension * slope;
          if (!hold_) slopes_(piece.a, static_cast<Eigen::Index>(i)) -= slope * root;
          entries_.emplace_back(piece.a, piece.a, k);
        }
        if (piece.b >= 0) {
          residual_[piece.b] -= tension * slope;
          if (!hold_) slopes_(piece.b, static_cast<Eigen::Index>(i)) += slope * root;
          entries_.emplace_back(piece.b, piece.b, k);
        }
        if (piece.a >= 0 && piece.b >= 0) {
          entries_.emplace_back(piece.a, piece.b, -k);
          entries_.emplace_back(piece.b, piece.a, -k);
        }
      }
    }
  }

  const std::vector<NetLine>& lines_;
  NetVector load_, residual_;
  bool hold_, analysed_ = false;
  Eigen::MatrixXd slopes_;  ///< of each line's stretch, by node, times the root of EA / length
  std::vector<Eigen::Triplet<double>> entries_;
  Eigen::SimplicialLDLT<NetMatrix> factor_;
};

}  // namespace

Outcome<NetDeflection> StringNet::press(const NetContact& contact, double force, Crossings crossings) const {
  if (!(force > 0 && force <= 10'000))
    return fail(FaultCode::bad_input, "a force is above 0 and at most 10,000 N", "force", "give newtons; a firm shot is some 1,000");
  const auto load = parts_->load(contact);
  if (!load) return fail(load.error());
  const Parts& net = *parts_;
  const bool hold = crossings == Crossings::hold;
  Pressed state = pressed_to(net.lines, force * load->nodes, net.factor.solve(load->nodes) * (force * 0.8), hold);
  NetDeflection out{force, 0, 0, 0, load->loaded, 0};
  NetNewton newton(net.lines, force * load->nodes, hold);
  while (out.steps < kMostSteps && !newton.step(state)) ++out.steps;
  if (out.steps == kMostSteps) return fail(FaultCode::bad_input, "no equilibrium was found", "force", "give a smaller force, or check tensions");
  out.mean = load->nodes.dot(state.w);
  out.deepest = state.w.head(static_cast<Eigen::Index>(net.crossing.size())).maxCoeff();
  double mains = 0, crosses = 0;
  for (std::size_t i = 0; i < net.lines.size(); ++i) {
    const NetLine& line = net.lines[i];
    const double local = force * load->local[i] / state.tension[i];
    out.mean += local;
    double work = local * force;
    for (const NetPiece& piece : line.pieces) {
      const double step = step_over(piece, state.w), l = piece.length();
      work += (hold ? tension_of(line, stretch_of(piece, step), l) : state.tension[i]) * step * step / std::sqrt(l * l + step * step);
    }
    (line.main ? mains : crosses) += work;
  }
  out.mains_share = mains / (mains + crosses);
  return out;
}

Outcome<std::vector<double>> StringNet::shape_under(const NetContact& contact, double force) const {
  const auto load = parts_->load(contact);
  if (!load) return fail(load.error());
  const NetVector w = parts_->factor.solve(load->nodes) * force;
  return std::vector<double>(w.data(), w.data() + parts_->crossing.size());
}

std::vector<NetPoint> StringNet::map(const NetContact& contact) const {
  std::vector<NetPoint> out;
  for (const BedPoint& point : parts_->crossing) {
    const auto across = parts_->layout.head.along_x(point.y), along = parts_->layout.head.along_y(point.x);
    if (!across || !along || point.x - across->first < contact.radius || across->second - point.x < contact.radius ||
        point.y - along->first < contact.radius || along->second - point.y < contact.radius)
      continue;
    NetContact here = contact;
    here.x = point.x;
    here.y = point.y;
    if (const auto pressed = press_lightly(here)) out.push_back({point.x, point.y, pressed->stiffness()});
  }
  return out;
}

std::vector<BedPoint> StringNet::crossings() const {
  return parts_->crossing;
}

}  // namespace weavelog
