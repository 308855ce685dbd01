#pragma once
// The cheapest plan of a small case by an exact solver that is none of ours: the GNU Linear Programming Kit. For tests alone.

#include <glpk.h>

#include <bit>
#include <optional>
#include <stdexcept>
#include <vector>

#include "core/plan/bench_problem.h"

namespace weavelog::testing {

/// None: no plan keeps the limits (and, `parted`, keeps apart all who are never to meet). As a set partitioning: every group of players
/// that may share a bench is a column for each bench, with what it costs; each player is in one column, each bench has one at most.
/// `groups`: within which everybody who shares a bench is; at most 14 players each. Throws if the solver gives up.
[[nodiscard]] inline std::optional<double> exact_benches(const BenchProblem& p, const std::vector<std::vector<std::size_t>>& groups, bool parted) {
  glp_term_out(GLP_OFF);
  glp_prob* lp = glp_create_prob();
  glp_set_obj_dir(lp, GLP_MIN);
  glp_add_rows(lp, static_cast<int>(p.players + p.benches));
  for (std::size_t i = 0; i < p.players; ++i) glp_set_row_bnds(lp, static_cast<int>(i + 1), GLP_FX, 1, 1);
  for (std::size_t b = 0; b < p.benches; ++b) glp_set_row_bnds(lp, static_cast<int>(p.players + b + 1), GLP_UP, 0, 1);
  for (const auto& group : groups) {
    if (group.size() > 14) throw std::logic_error("too many columns");
    for (std::size_t set = 1; set < std::size_t{1} << group.size(); ++set) {
      std::vector<std::size_t> in;
      for (std::size_t k = 0; k < group.size(); ++k)
        if ((set >> k & 1) != 0) in.push_back(group[k]);
      double meetings = 0;
      bool may = true;
      for (const std::size_t i : in)
        for (const std::size_t j : in)
          if (j < i) {
            const double hard = p.hard[i * p.players + j];
            may = may && !(parted && hard > 0);
            meetings += p.clash[i * p.players + j] + hard;
          }
      if (!may) continue;
      for (std::size_t b = 0; b < p.benches; ++b) {
        double cost = meetings;
        bool fits = true;
        for (const std::size_t i : in) cost += p.own[i * p.benches + b];
        for (std::size_t d = 0; d < p.days; ++d) {
          double load = 0;
          for (const std::size_t i : in) load += p.load[i * p.days + d];
          if (load > p.fair[b * p.days + d]) cost += p.over_weight * (load - p.fair[b * p.days + d]);
          fits = fits && load <= p.most[b * p.days + d];
        }
        if (!fits || cost == kNever) continue;
        const int at = glp_add_cols(lp, 1);
        glp_set_col_kind(lp, at, GLP_BV);
        glp_set_obj_coef(lp, at, cost);
        std::vector<int> rows{0};
        for (const std::size_t i : in) rows.push_back(static_cast<int>(i + 1));
        rows.push_back(static_cast<int>(p.players + b + 1));
        const std::vector<double> ones(rows.size(), 1);
        glp_set_mat_col(lp, at, static_cast<int>(rows.size()) - 1, rows.data(), ones.data());
      }
    }
  }
  glp_iocp how;
  glp_init_iocp(&how);
  how.presolve = GLP_ON;
  how.tm_lim = 60'000;
  const int ended = glp_get_num_cols(lp) == 0 ? GLP_ENOPFS : glp_intopt(lp, &how);
  const int status = glp_mip_status(lp);
  const double cost = glp_mip_obj_val(lp);
  glp_delete_prob(lp);
  if (ended == 0 && status == GLP_OPT) return cost;
  if (ended == GLP_ENOPFS || (ended == 0 && status == GLP_NOFEAS)) return std::nullopt;
  throw std::runtime_error("the exact solver gave up: " + std::to_string(ended));
}

}  // namespace weavelog::testing
