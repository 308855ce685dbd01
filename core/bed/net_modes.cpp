// The lowest modes of the net: K w = (2 pi f)^2 M w with the strings' mass on the nodes, by Lanczos steps on the inverse (Spectra).

#include <Spectra/SymEigsShiftSolver.h>

#include <cmath>
#include <numbers>

#include "core/bed/net_parts.h"

namespace weavelog {
namespace {

/// M^1/2 K^-1 M^1/2; the shift is always 0.
class Inverse {
 public:
  using Scalar = double;
  Inverse(const Eigen::SimplicialLDLT<NetMatrix>& factor, NetVector roots) : factor_(&factor), roots_(std::move(roots)) {}
  [[nodiscard]] Eigen::Index rows() const { return roots_.size(); }
  [[nodiscard]] Eigen::Index cols() const { return roots_.size(); }
  void set_shift(double) {}
  void perform_op(const double* in, double* out) const {
    const Eigen::Map<const NetVector> x(in, rows());
    const NetVector right = roots_.cwiseProduct(x);
    const NetVector solved = factor_->solve(right);
    Eigen::Map<NetVector>(out, rows()) = roots_.cwiseProduct(solved);
  }

 private:
  const Eigen::SimplicialLDLT<NetMatrix>* factor_;
  NetVector roots_;
};

}  // namespace

Outcome<std::vector<double>> StringNet::modes(int count) const {
  const int nodes = parts_->nodes;
  if (count < 1 || count > 20 || (count >= nodes && nodes > 1))
    return fail(FaultCode::bad_input, "a net has as many modes as nodes, of which 1 to 20 are told", "modes", "ask for fewer");
  NetVector mass = NetVector::Zero(nodes);
  for (const NetLine& line : parts_->lines) {
    if (!(line.string.linear_density > 0))
      return fail(FaultCode::bad_input, "a string without mass has no tone", "net", "give its linear density in kg/m");
    for (const NetPiece& piece : line.pieces) {
      const double half = line.string.linear_density * piece.length() / 2;
      if (piece.a >= 0) mass[piece.a] += half;
      if (piece.b >= 0) mass[piece.b] += half;
    }
  }
  std::vector<double> out;
  if (nodes == 1) {
    NetVector one = NetVector::Ones(1);
    return std::vector<double>{std::sqrt(1 / (parts_->factor.solve(one)[0] * mass[0])) / (2 * std::numbers::pi)};
  }
  Inverse inverse(parts_->factor, mass.cwiseSqrt());
  Spectra::SymEigsShiftSolver<Inverse> solver(inverse, count, std::min(nodes, std::max(2 * count + 12, 20)), 0.0);
  solver.init();
  // Rising: the largest of the inverse are the lowest of the bed.
  solver.compute(Spectra::SortRule::LargestMagn, 1000, 1e-11, Spectra::SortRule::SmallestAlge);
  if (solver.info() != Spectra::CompInfo::Successful)
    return fail(FaultCode::bad_input, "the modes of this net were not found", "modes", "check tensions and linear densities");
  for (int i = 0; i < count; ++i) out.push_back(std::sqrt(solver.eigenvalues()[i]) / (2 * std::numbers::pi));
  return out;
}

}  // namespace weavelog
