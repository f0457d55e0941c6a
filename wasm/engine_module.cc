// The engine as a browser sees it: one function, text in, text out.
#include <emscripten/bind.h>

#include <string>

#include "report/request.h"

namespace {

std::string request(const std::string& text) { return proofstone::answer_request(text); }

}  // namespace

EMSCRIPTEN_BINDINGS(proofstone) { emscripten::function("request", &request); }
