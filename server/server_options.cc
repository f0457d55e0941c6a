#include "server/server_options.h"

#include <charconv>
#include <cstddef>
#include <system_error>

namespace proofstone {

const char* const server_usage =
    "proofstone-server [--pages DIR] [--examples DIR] [--port N] [--address A]\n"
    "\n"
    "Hands out the screens and the example sites to a browser on this machine.\n"
    "  --pages DIR     the built screens; default web/dist\n"
    "  --examples DIR  the example sites; default examples\n"
    "  --port N        0 to 65535; 0 takes a free one. Without it 8420, or a free one if 8420 is "
    "busy\n"
    "  --address A     the address to listen on; default 127.0.0.1, which other machines cannot "
    "reach\n"
    "  --help          this text\n";

namespace {

// Sets `port` and returns true when all of `text` is a port number.
bool read_port(const std::string& text, int& port) {
  const char* const end = text.data() + text.size();
  const auto [stopped, error] = std::from_chars(text.data(), end, port);
  return error == std::errc() && stopped == end && port >= 0 && port <= 65535;
}

}  // namespace

ParsedServerOptions parse_server_options(const std::vector<std::string>& arguments) {
  ParsedServerOptions parsed;
  ServerOptions& options = parsed.options;
  for (std::size_t i = 0; i < arguments.size(); ++i) {
    const std::string& name = arguments[i];
    if (name == "--help") {
      options.help = true;
      continue;
    }
    const bool known =
        name == "--pages" || name == "--examples" || name == "--port" || name == "--address";
    if (!known) {
      parsed.problem = "Unknown option " + name + "; --help lists the options.";
      return parsed;
    }
    if (i + 1 == arguments.size() || arguments[i + 1].empty()) {
      parsed.problem = "Option " + name + " needs a value after it.";
      return parsed;
    }
    const std::string& value = arguments[++i];
    if (name == "--pages") {
      options.folders.pages = value;
    } else if (name == "--examples") {
      options.folders.examples = value;
    } else if (name == "--address") {
      options.address = value;
    } else if (read_port(value, options.port)) {
      options.port_was_named = true;
    } else {
      parsed.problem = "--port " + value + " is not a port; a whole number from 0 to 65535 is.";
      return parsed;
    }
  }
  return parsed;
}

}  // namespace proofstone
