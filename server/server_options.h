#pragma once

#include <string>
#include <vector>

#include "server/pages_server.h"

namespace proofstone {

/// What the server's command line asks for.
struct ServerOptions {
  ServedFolders folders{"web/dist", "examples"};
  /// Only programs of this machine can reach the loopback address.
  std::string address = "127.0.0.1";
  int port = 8420;
  /// Whether the user named a port; then no other will do.
  bool port_was_named = false;
  bool help = false;
};

/// The options, or in `problem` one sentence that says what is wrong with them.
struct ParsedServerOptions {
  ServerOptions options;
  std::string problem;
};

/// Reads the arguments that follow the program's name.
ParsedServerOptions parse_server_options(const std::vector<std::string>& arguments);

/// How the program is called.
extern const char* const server_usage;

}  // namespace proofstone
