#include "office/quantities_workbook.h"

#include <fmt/format.h>
#include <xlsxwriter.h>

#include <cstdio>
#include <nlohmann/json.hpp>
#include <vector>

namespace proofstone {
namespace {

using nlohmann::json;

/// A cell of a workbook holds no longer text.
constexpr std::size_t longest_text = 32767;

struct Formats {
  lxw_format* heading;
  lxw_format* amount;
  lxw_format* money;
  lxw_format* words;
};

Formats add_formats(lxw_workbook* workbook) {
  Formats formats{workbook_add_format(workbook), workbook_add_format(workbook),
                  workbook_add_format(workbook), workbook_add_format(workbook)};
  format_set_bold(formats.heading);
  format_set_text_wrap(formats.heading);
  format_set_bottom(formats.heading, LXW_BORDER_THIN);
  format_set_num_format(formats.amount, "#,##0.##");
  format_set_num_format(formats.money, "#,##0");
  format_set_text_wrap(formats.words);
  return formats;
}

std::string text_of(const json& object, const char* field) {
  const auto found = object.find(field);
  return found != object.end() && found->is_string() ? found->get<std::string>() : std::string();
}

/// At most `longest_text` bytes, cut between characters.
std::string fitting(std::string text) {
  if (text.size() <= longest_text) return text;
  auto end = longest_text;
  while (end > 0 && (static_cast<unsigned char>(text[end]) & 0xC0) == 0x80) --end;
  text.resize(end);
  return text;
}

/// One sheet that is filled from the top.
class Sheet {
 public:
  Sheet(lxw_workbook* workbook, const char* name, const Formats& formats)
      : sheet_(workbook_add_worksheet(workbook, name)), formats_(formats) {}

  void heading(const std::vector<std::string>& words, const std::vector<double>& widths) {
    for (std::size_t i = 0; i < words.size(); ++i) {
      const auto column = static_cast<lxw_col_t>(i);
      worksheet_set_column(sheet_, column, column, widths[i], nullptr);
      put(column, words[i], formats_.heading);
    }
    worksheet_freeze_panes(sheet_, row_ + 1, 0);
    worksheet_repeat_rows(sheet_, row_, row_);
    worksheet_set_landscape(sheet_);
    worksheet_fit_to_pages(sheet_, 1, 0);
    ++row_;
  }
  void words(int column, const std::string& text) {
    if (!text.empty()) put(static_cast<lxw_col_t>(column), text, formats_.words);
  }
  void amount(int column, const json& object, const char* field) {
    number(column, object, field, formats_.amount);
  }
  void money(int column, const json& object, const char* field) {
    number(column, object, field, formats_.money);
  }
  void next() { ++row_; }

 private:
  void put(lxw_col_t column, const std::string& text, lxw_format* format) {
    worksheet_write_string(sheet_, row_, column, fitting(text).c_str(), format);
  }
  void number(int column, const json& object, const char* field, lxw_format* format) {
    const auto found = object.find(field);
    if (found == object.end() || !found->is_number()) return;
    worksheet_write_number(sheet_, row_, static_cast<lxw_col_t>(column), found->get<double>(),
                           format);
  }

  lxw_worksheet* sheet_;
  const Formats& formats_;
  lxw_row_t row_ = 0;
};

std::string how_of(const json& row) {
  if (!row.contains("value")) return "not yet known";
  return (row.value("partial", false) ? "in part: " : "") + text_of(row, "how");
}

void write_row(Sheet& sheet, const std::string& zone, const json& row) {
  int column = 0;
  if (!zone.empty()) sheet.words(column++, zone);
  sheet.words(column++, text_of(row, "what"));
  sheet.amount(column++, row, "value");
  sheet.words(column++, text_of(row, "unit"));
  sheet.words(column++, how_of(row));
  sheet.words(column++, text_of(row, "price"));
  sheet.money(column, row, "cost");
  sheet.next();
}

std::string cost_heading(const json& quantities) {
  const auto currency = text_of(quantities, "currency");
  return currency.empty() ? "Cost" : fmt::format("Cost ({})", currency);
}

void write_totals(lxw_workbook* workbook, const Formats& formats, const json& quantities) {
  Sheet sheet(workbook, "Totals", formats);
  sheet.heading({"What", "Amount", "Unit", "How", "Price", cost_heading(quantities)},
                {42, 14, 8, 44, 30, 16});
  for (const auto& row : quantities["totals"]) write_row(sheet, "", row);
  if (!quantities.contains("cost")) return;
  sheet.words(0, "Cost of all that has a price");
  sheet.money(5, quantities, "cost");
}

void write_zones(lxw_workbook* workbook, const Formats& formats, const json& quantities) {
  Sheet sheet(workbook, "By zone", formats);
  sheet.heading({"Zone", "What", "Amount", "Unit", "How", "Price", cost_heading(quantities)},
                {24, 42, 14, 8, 44, 30, 16});
  for (const auto& zone : quantities["zones"]) {
    for (const auto& row : zone["rows"]) write_row(sheet, text_of(zone, "name"), row);
  }
}

void write_steps(lxw_workbook* workbook, const Formats& formats, const json& quantities) {
  Sheet sheet(workbook, "How computed", formats);
  sheet.heading({"Zone", "Symbol", "Meaning", "Formula", "Value", "Unit", "Source"},
                {24, 10, 48, 36, 14, 8, 36});
  for (const auto& zone : quantities["zones"]) {
    const auto name = text_of(zone, "name");
    for (const auto& step : zone["steps"]) {
      sheet.words(0, name);
      sheet.words(1, text_of(step, "symbol"));
      sheet.words(2, text_of(step, "meaning"));
      sheet.words(3, text_of(step, "formula"));
      sheet.amount(4, step, "value");
      sheet.words(5, text_of(step, "unit"));
      sheet.words(6, text_of(step, "source"));
      sheet.next();
    }
    for (const char* list : {"missing", "notes"}) {
      for (const auto& sentence : zone[list]) {
        sheet.words(0, name);
        sheet.words(2, sentence.get<std::string>());
        sheet.next();
      }
    }
  }
}

void write_about(lxw_workbook* workbook, const Formats& formats, const json& quantities) {
  Sheet sheet(workbook, "About", formats);
  sheet.heading({"", ""}, {24, 90});
  const auto line = [&sheet](const char* what, const std::string& text) {
    sheet.words(0, what);
    sheet.words(1, text);
    sheet.next();
  };
  line("Site", text_of(quantities["site"], "name"));
  line("Revision", text_of(quantities["site"], "revision"));
  line("Computed by", "Proofstone " + text_of(quantities, "engine"));
  line("Prices", text_of(quantities, "prices_from"));
  for (const auto& what : quantities["without_price"]) line("No price", what.get<std::string>());
  for (const auto& caution : quantities["cautions"]) line("Caution", caution.get<std::string>());
}

Problem not_writable(const std::string& path, const std::string& why) {
  return {"not-writable", "The workbook could not be written: " + why, path, "",
          "a place where files may be written"};
}

}  // namespace

Problems write_quantities_workbook(const std::string& path, const json& answer) {
  const auto& quantities = answer.at("quantities");
  const auto beside = path + ".part";
  lxw_workbook* workbook = workbook_new(beside.c_str());
  if (workbook == nullptr) return {not_writable(path, "no memory")};
  const auto formats = add_formats(workbook);
  write_totals(workbook, formats, quantities);
  write_zones(workbook, formats, quantities);
  write_steps(workbook, formats, quantities);
  write_about(workbook, formats, quantities);
  if (const auto error = workbook_close(workbook); error != LXW_NO_ERROR) {
    std::remove(beside.c_str());
    return {not_writable(path, lxw_strerror(error))};
  }
  if (std::rename(beside.c_str(), path.c_str()) != 0) {
    std::remove(beside.c_str());
    return {not_writable(path, "the place is not there, or not yours")};
  }
  return {};
}

}  // namespace proofstone
