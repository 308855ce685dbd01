// quality column: plain statistics of a column, to all digits.

#include <cmath>

#include "core/base/text.h"
#include "core/plan/day_tables.h"
#include "core/plan/plan_table.h"
#include "core/quality/line_fit.h"
#include "core/quality/statistics.h"
#include "sync/cli/quality_commands.h"

namespace weavelog::cli {
namespace {

struct ColumnArguments {
  std::string file, value, by, x;
  std::vector<int> powers{0, 1};
};

Outcome<std::vector<WrittenNumber>> numbers_in(const PlanTable& table, const std::string& column) {
  std::vector<WrittenNumber> out;
  for (const CsvRow& row : table.rows()) {
    auto number = WrittenNumber::parse(table.cell(row, column));
    if (!number) return table.wrong(row, column, number.error().what, number.error().what_to_do);
    out.push_back(*number);
  }
  return out;
}

json::object line_json(const VarianceLine& line) {
  return {{"freedom", line.freedom}, {"squares", line.squares}, {"mean_square", line.mean_square}};
}

std::string or_none(const std::optional<double>& value) { return value ? all_digits(*value) : "none"; }

Fault of_file(Fault fault, const std::string& file) {
  fault.where = file + (fault.where.empty() ? "" : ", " + fault.where);
  return fault;
}

Outcome<Ending> column(const Settings& settings, const ColumnArguments& arguments) {
  const auto bytes = plan_file(arguments.file);
  if (!bytes) return fail(bytes.error());
  const auto text = table_text(*bytes, arguments.file);
  if (!text) return fail(text.error());
  std::string value = arguments.value;
  if (value.empty()) {
    const auto header = read_csv(*text, {}, arguments.file);
    if (!header) return fail(header.error());
    value = header->header.front();
  }
  const auto table = PlanTable::read(*text, arguments.file, {value.c_str()});
  if (!table) return fail(table.error());
  for (const std::string& other : {arguments.by, arguments.x})
    if (!other.empty())
      if (const auto there = PlanTable::read(*text, arguments.file, {other.c_str()}); !there) return fail(there.error());
  const auto numbers = numbers_in(*table, value);
  if (!numbers) return fail(numbers.error());
  const auto summary = summary_of(*numbers);
  if (!summary) return fail(of_file(summary.error(), arguments.file));
  json::object document{{"column", value},
                        {"count", summary->count},
                        {"mean", summary->mean},
                        {"deviation", number_or_null(summary->deviation)},
                        {"lag1", number_or_null(summary->lag1)}};
  std::string out = value + ": " + std::to_string(summary->count) + " numbers\nmean       " + all_digits(summary->mean) + "\ndeviation  " +
                    or_none(summary->deviation) + "\nlag-1      " + or_none(summary->lag1) + "\n";
  if (!arguments.by.empty()) {
    std::vector<std::string> names;
    std::map<std::string, std::vector<WrittenNumber>> groups;
    for (std::size_t i = 0; i < numbers->size(); ++i) {
      const std::string name = table->cell(table->rows()[i], arguments.by);
      if (!groups.contains(name)) names.push_back(name);
      groups[name].push_back((*numbers)[i]);
    }
    std::vector<std::vector<WrittenNumber>> all;
    json::array named;
    for (const std::string& name : names) {
      all.push_back(groups[name]);
      named.push_back(json::string(name));
    }
    const auto one = one_way(all);
    if (!one) return fail(of_file(one.error(), arguments.file));
    document["one_way"] = json::object{{"by", arguments.by},
                                       {"groups", std::move(named)},
                                       {"between", line_json(one->between)},
                                       {"within", line_json(one->within)},
                                       {"f", number_or_null(one->f)},
                                       {"chance", number_or_null(one->chance)},
                                       {"r_squared", number_or_null(one->r_squared)},
                                       {"residual_deviation", one->residual_deviation},
                                       {"between_variance", one->between_variance},
                                       {"within_variance", one->within_variance}};
    const auto put = [&](const char* name, const VarianceLine& line) {
      out += std::string(name) + "  freedom " + all_digits(line.freedom) + ", squares " + all_digits(line.squares) + ", mean square " +
             all_digits(line.mean_square) + "\n";
    };
    out += "by " + arguments.by + ", " + std::to_string(names.size()) + " groups\n";
    put("between", one->between);
    put("within ", one->within);
    out += "F " + or_none(one->f) + ", chance of as much or more if groups are alike " + or_none(one->chance) + "\nr squared " +
           or_none(one->r_squared) + ", residual deviation " + all_digits(one->residual_deviation) + "\n";
  }
  if (!arguments.x.empty()) {
    const auto x = numbers_in(*table, arguments.x);
    if (!x) return fail(x.error());
    const auto fit = LineFit::of(*x, *numbers, arguments.powers);
    if (!fit) return fail(of_file(fit.error(), arguments.file));
    json::array coefficients;
    out += "against " + arguments.x + "\n";
    for (std::size_t k = 0; k < fit->powers().size(); ++k) {
      coefficients.push_back(
          json::object{{"power", fit->powers()[k]}, {"coefficient", fit->coefficients()[k]}, {"error", fit->errors()[k]}});
      out += "x^" + std::to_string(fit->powers()[k]) + "  " + all_digits(fit->coefficients()[k]) + ", standard error " + all_digits(fit->errors()[k]) + "\n";
    }
    document["line"] = json::object{{"x", arguments.x},
                                    {"coefficients", std::move(coefficients)},
                                    {"freedom", fit->freedom()},
                                    {"residual_deviation", fit->residual_deviation()},
                                    {"residual_squares", fit->residual_squares()},
                                    {"r_squared", number_or_null(fit->r_squared())}};
    out += "residual deviation " + all_digits(fit->residual_deviation()) + ", r squared " + or_none(fit->r_squared()) + "\n";
  }
  Context(settings).answer(document, out);
  return Ending::done;
}

}  // namespace

void add_column_command(CLI::App& quality, FolderWork& chosen) {
  add_plan_command<ColumnArguments>(quality, chosen, "column", "Mean, deviation, lag-1 correlation, one-way table, line: to all digits of a double", column,
                                    [](CLI::App& command, ColumnArguments& arguments) {
                                      command.add_option("file", arguments.file, "CSV with a header, or JSON, a list of objects")->required();
                                      command.add_option("--value", arguments.value, "The column; default: the first");
                                      command.add_option("--by", arguments.by, "A column of groups: a one-way table of variances");
                                      command.add_option("--x", arguments.x, "A column of numbers: the line of the value against it");
                                      command.add_option("--powers", arguments.powers, "Of the line: 0,1 straight; 1 through the origin; 0,1,2 bent")
                                          ->delimiter(',')
                                          ->capture_default_str();
                                      command.footer(
                                          "Numbers are taken as written, up to 18 digits.\n"
                                          "--json: column, count, mean, deviation, lag1; one_way {by, groups, between, within {freedom, squares, mean_square}, f, "
                                          "chance, r_squared,\n"
                                          "residual_deviation, between_variance, within_variance}; line {x, coefficients [{power, coefficient, error}], freedom, "
                                          "residual_deviation,\nresidual_squares, r_squared}. null is what there is none of.");
                                    });
}

}  // namespace weavelog::cli
