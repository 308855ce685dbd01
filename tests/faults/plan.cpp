#include "tests/faults/plan.h"

#include <sys/resource.h>

#include <cstdio>
#include <cstdlib>

namespace weavelog::testing {
namespace {

long long number(const char* name, long long otherwise) {
  const char* const text = std::getenv(name);
  return text == nullptr || *text == '\0' ? otherwise : std::stoll(text);
}

}  // namespace

Plan Plan::from_environment() {
  Plan plan;
  plan.seed = static_cast<std::uint64_t>(number("WEAVELOG_FAULTS_SEED", static_cast<long long>(plan.seed)));
  plan.rounds = static_cast<int>(number("WEAVELOG_FAULTS_ROUNDS", plan.rounds));
  plan.most = std::chrono::seconds(number("WEAVELOG_FAULTS_SECONDS", 0));
  plan.full = number("WEAVELOG_FAULTS_FULL", 0) != 0;
  return plan;
}

void figure(const std::string& fault, const std::string& what, double value, const std::string& unit) {
  std::printf("figure: %s: %s: %.6g %s\n", fault.c_str(), what.c_str(), value, unit.c_str());
  std::fflush(stdout);
}

double bound_mb(double mb) {
#ifdef WEAVELOG_SANITIZED
  return 8 * mb;
#else
  return mb;
#endif
}

void allow_many_descriptors() {
  rlimit limit{};
  ::getrlimit(RLIMIT_NOFILE, &limit);
  limit.rlim_cur = limit.rlim_max;
  ::setrlimit(RLIMIT_NOFILE, &limit);
}

void skip(const std::string& fault, const std::string& why) {
  std::printf("skipped: %s: %s\n", fault.c_str(), why.c_str());
  std::fflush(stdout);
}

}  // namespace weavelog::testing
