// The engine as a browser sees it: one function, text in, text out.
#include <emscripten/bind.h>
#include <emscripten/val.h>

#include <cstdint>
#include <string>

#include "report/request.h"

namespace {

using emscripten::val;

/// The answer as a string of the browser, decoded by the browser itself: byte by byte, as strings
/// are handed over otherwise, takes several times as long.
val request(const std::string& text) {
  static const val decoder = val::global("TextDecoder").new_();
  const auto answer = proofstone::answer_request(text);
  return decoder.call<val>(
      "decode", val(emscripten::typed_memory_view(
                    answer.size(), reinterpret_cast<const std::uint8_t*>(answer.data()))));
}

}  // namespace

EMSCRIPTEN_BINDINGS(proofstone) { emscripten::function("request", &request); }
