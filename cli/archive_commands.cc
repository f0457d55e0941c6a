#include "cli/archive_commands.h"

#include <fmt/format.h>

#include <nlohmann/json.hpp>
#include <utility>

#include "archive/joined_sites.h"
#include "archive/packed_site.h"
#include "archive/without_places.h"
#include "cli/engine_question.h"
#include "cli/exit_codes.h"
#include "cli/output.h"
#include "cli/site_folder.h"
#include "cli/terminal_text.h"

namespace proofstone {
namespace {

using nlohmann::json;

/// Writes a site that the engine takes as one file; else tells what is wrong with it.
int write_archive(PackedSite site, const std::string& path) {
  json files = json::array();
  for (const auto& [name, text] : site.files) files.push_back({{"name", name}, {"text", text}});
  const auto answer =
      ask({{"ask", "validate"}, {"document", site.document}, {"files", std::move(files)}});
  if (!answer["problems"].empty()) {
    complain(problems_text(answer["problems"]));
    return exit_problems;
  }
  const auto bytes = archive_of(std::move(site));
  if (!bytes) return refuse(bytes.problems(), exit_failed);
  if (const auto problems = write_text_file(path, *bytes); !problems.empty()) {
    return refuse(problems, exit_failed);
  }
  return exit_done;
}

int needs_out(std::string_view what) {
  return refuse({{"usage", fmt::format("{} is a file.", what), "", "", "--out FILE.zip"}},
                exit_usage);
}

std::string count_of(std::size_t number, std::string_view one, std::string_view many) {
  return fmt::format("{} {}", number, number == 1 ? one : many);
}

/// One side of a crossing: "set to 4 ft by A. Lind, 2026-05-05T15:10:00Z".
std::string side_text(const json& side) {
  constexpr std::size_t longest = 60;
  std::string what = "removed";
  if (side.contains("to")) {
    const auto value = side["to"].is_string() ? side["to"].get<std::string>() : side["to"].dump();
    what = value.size() > longest ? "set anew" : "set to " + value;
  }
  return fmt::format("{} by {}, {}", what, side["author"].get<std::string>(),
                     side["time"].get<std::string>());
}

std::string conflicts_text(const json& conflicts) {
  if (conflicts.empty()) return "No changes cross.\n";
  std::string text =
      fmt::format("{} until a revision upon both settles it:\n",
                  conflicts.size() == 1 ? "One change crosses"
                                        : fmt::format("{} changes cross", conflicts.size()));
  for (const auto& conflict : conflicts) {
    text += fmt::format("  {}\n    stands: {}\n    passed over: {}\n",
                        conflict["pointer"].get<std::string>(), side_text(conflict["stands"]),
                        side_text(conflict["passed_over"]));
  }
  return text;
}

}  // namespace

int pack_command(const Arguments& arguments) {
  const auto path = arguments.value("out");
  if (path.empty()) return needs_out("A packed site");
  auto site = read_whole_site(arguments.words[0]);
  if (!site) return refuse(site.problems(), code_of(site.problems()));
  std::size_t left_out = 0;
  if (arguments.has("without-positions")) {
    auto without = without_places(std::move(*site));
    *site = std::move(without.site);
    left_out = without.photos_left_out;
  }
  const auto files = site->files.size();
  const auto photos = site->photos.size();
  const int written = write_archive(std::move(*site), path);
  if (written != exit_done) return written;
  print(fmt::format("The site stands in {}: its document, {} and {}.\n", path,
                    count_of(files, "file", "files"), count_of(photos, "photo", "photos")));
  if (left_out > 0) {
    print(fmt::format("{} left out, which may tell where {} taken.\n",
                      count_of(left_out, "photo is", "photos are"),
                      left_out == 1 ? "it was" : "they were"));
  }
  return exit_done;
}

int join_command(const Arguments& arguments) {
  const auto path = arguments.value("out");
  if (path.empty()) return needs_out("The joined site");
  auto one = read_whole_site(arguments.words[0]);
  if (!one) return refuse(one.problems(), code_of(one.problems()));
  auto other = read_whole_site(arguments.words[1]);
  if (!other) return refuse(other.problems(), code_of(other.problems()));
  auto joined =
      joined_sites(std::move(*one), std::move(*other), arguments.words[0], arguments.words[1]);
  if (!joined) return refuse(joined.problems(), exit_problems);
  const auto state = ask({{"ask", "state"}, {"document", joined->site.document}});
  if (state.contains("problems")) {
    complain(problems_text(state["problems"]));
    return exit_problems;
  }
  const int written = write_archive(std::move(joined->site), path);
  if (written != exit_done) return written;
  if (arguments.has("json")) {
    print(json{{"only_in_one", joined->only_in_one},
               {"only_in_other", joined->only_in_other},
               {"conflicts", state["conflicts"]}}
              .dump(2) +
          "\n");
    return exit_done;
  }
  print(fmt::format("The site stands in {}. {} has {} of its own, {} has {}.\n{}", path,
                    arguments.words[0], count_of(joined->only_in_one, "revision", "revisions"),
                    arguments.words[1], count_of(joined->only_in_other, "revision", "revisions"),
                    conflicts_text(state["conflicts"])));
  return exit_done;
}

}  // namespace proofstone
