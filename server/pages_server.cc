#include "server/pages_server.h"

#include <sys/socket.h>

#include <cstddef>
#include <filesystem>
#include <system_error>

namespace proofstone {
namespace {

// A browser keeps six connections open for each page, and each holds one thread while it is open.
constexpr std::size_t threads = 32;
constexpr std::size_t longest_request_body = std::size_t{64} << 10;

constexpr const char* content_security_policy =
    "default-src 'self'; "
    "script-src 'self' 'wasm-unsafe-eval'; "
    "worker-src 'self'; "
    "img-src 'self' data: blob:; "
    "object-src 'none'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

// The library compresses what it knows by these types without their character set, anew for each
// request and so thoroughly that a page on the same machine waits seconds for its scripts.
constexpr const char* script_type = "application/javascript; charset=utf-8";
constexpr const char* data_type = "application/json; charset=utf-8";

// The library's own choice also sets SO_REUSEPORT, with which two servers share one port in
// silence.
void let_a_busy_port_be_an_error(socket_t socket) {
  const int yes = 1;
  setsockopt(socket, SOL_SOCKET, SO_REUSEADDR, &yes, sizeof yes);
}

bool is_folder(const std::string& path) {
  std::error_code ignored;
  return std::filesystem::is_directory(path, ignored);
}

}  // namespace

std::string serve_folders(httplib::Server& server, const ServedFolders& folders) {
  if (!is_folder(folders.pages)) {
    return "The folder of the screens, " + folders.pages + ", does not exist; build them first.";
  }
  if (!is_folder(folders.examples)) {
    return "The folder of the examples, " + folders.examples + ", does not exist.";
  }
  server.new_task_queue = [] { return new httplib::ThreadPool(threads); };
  server.set_payload_max_length(longest_request_body);
  server.set_socket_options(let_a_busy_port_be_an_error);
  server.set_default_headers({{"Content-Security-Policy", content_security_policy},
                              {"X-Content-Type-Options", "nosniff"},
                              {"Referrer-Policy", "no-referrer"},
                              {"Cache-Control", "no-cache"}});

  server.set_file_extension_and_mimetype_mapping("wasm", "application/wasm");
  server.set_file_extension_and_mimetype_mapping("weights", "application/octet-stream");
  server.set_file_extension_and_mimetype_mapping("js", script_type);
  server.set_file_extension_and_mimetype_mapping("mjs", script_type);
  server.set_file_extension_and_mimetype_mapping("json", data_type);
  server.set_file_extension_and_mimetype_mapping("csv", "text/csv; charset=utf-8");
  server.set_file_extension_and_mimetype_mapping("html", "text/html; charset=utf-8");
  server.set_file_extension_and_mimetype_mapping("webmanifest", "application/manifest+json");

  server.set_mount_point("/examples", folders.examples);
  server.set_mount_point("/", folders.pages);
  // The system's file calls would stop reading a path at a zero byte.
  server.set_pre_routing_handler([](const httplib::Request& request, httplib::Response& response) {
    if (request.path.find('\0') == std::string::npos) {
      return httplib::Server::HandlerResponse::Unhandled;
    }
    response.status = 400;
    return httplib::Server::HandlerResponse::Handled;
  });
  server.set_error_handler([](const httplib::Request& request, httplib::Response& response) {
    const bool reading = request.method == "GET" || request.method == "HEAD";
    if (!reading) {
      response.status = 405;
      response.set_header("Allow", "GET, HEAD");
    }
    response.set_content(
        reading ? "There is no such page here.\n" : "This server only hands out files.\n",
        "text/plain; charset=utf-8");
  });
  return "";
}

Listening take_port(httplib::Server& server, const std::string& address, int port,
                    bool any_port_will_do) {
  if (port != 0 && server.bind_to_port(address, port)) {
    return {port, ""};
  }
  if (port == 0 || any_port_will_do) {
    const int free_port = server.bind_to_any_port(address);
    if (free_port > 0) {
      return {free_port, ""};
    }
    return {0, "No port of the address " + address +
                   " can be opened; is it an address of this machine?"};
  }
  return {0, "Port " + std::to_string(port) + " of " + address +
                 " cannot be opened: another program holds it, or it is not allowed to you. Choose "
                 "another with --port."};
}

}  // namespace proofstone
