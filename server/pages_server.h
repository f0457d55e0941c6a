#pragma once

#include <string>

#include "server/http_library.h"

namespace proofstone {

/// The folders that the local server hands out, read-only.
struct ServedFolders {
  /// The built screens; served at "/".
  std::string pages;
  /// The example sites; served at "/examples/".
  std::string examples;
};

/// Prepares `server` to hand out `folders` with the right media types and a content security policy
/// that lets the page compile its WebAssembly engine and start its worker, and nothing from
/// elsewhere. Only GET and HEAD are answered. Returns an empty text, or one sentence that says
/// which folder is missing.
std::string serve_folders(httplib::Server& server, const ServedFolders& folders);

/// Where the server listens, or one sentence that says why it cannot.
struct Listening {
  /// The port in use; 0 when listening failed.
  int port = 0;
  /// Empty when listening works.
  std::string problem;
};

/// Takes `port` (1 to 65535) of `address`, an IP address or host name of this machine. When that
/// port is busy and `any_port_will_do`, takes a free one instead; port 0 always asks for a free
/// one.
Listening take_port(httplib::Server& server, const std::string& address, int port,
                    bool any_port_will_do);

}  // namespace proofstone
