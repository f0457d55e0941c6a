#pragma once

#include <nlohmann/json_fwd.hpp>

#include "engine/finding/problem.h"

namespace proofstone {

/// A site document (text or JSON) as its revisions leave it, and what each of them touched:
/// {"state": {…}, "revisions": [{id, after, time, author, note, touches: ["/zones/outer-bank"]}],
/// "heads": [ids that no other stands upon], "conflicts": [{pointer, stands, passed_over}]}:
/// changes that cross and that nobody has settled, each with who made it. Tables stay the files
/// they are. Problems as for read_revisions and fold.
Expected<nlohmann::json> state_answer(const nlohmann::json& document);

}  // namespace proofstone
