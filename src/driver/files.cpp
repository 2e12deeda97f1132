// SPDX-License-Identifier: Apache-2.0
#include "driver/files.hpp"

#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <filesystem>
#include <memory>
#include <system_error>

namespace maslin {
namespace {

ReadError error_of(int number) {
  const std::string reason = std::strerror(number);
  if (number == ENOENT) return {ReadError::Kind::missing, reason};
  if (number == EACCES || number == EPERM) return {ReadError::Kind::denied, reason};
  if (number == EISDIR) return {ReadError::Kind::folder, reason};
  return {ReadError::Kind::failed, reason};
}

struct CloseFile {
  void operator()(std::FILE* file) const { std::fclose(file); }
};

}  // namespace

Result<std::string, ReadError> DiskFiles::read(const std::string& path, std::size_t most) {
  std::error_code ignored;
  if (std::filesystem::is_directory(path, ignored)) return Failure{error_of(EISDIR)};
  const std::unique_ptr<std::FILE, CloseFile> file(std::fopen(path.c_str(), "rb"));
  if (!file) return Failure{error_of(errno)};
  std::string text;
  constexpr std::size_t block = 1 << 16;
  std::size_t got = 0;
  do {
    const std::size_t before = text.size();
    text.resize(before + block);
    got = std::fread(text.data() + before, 1, block, file.get());
    text.resize(before + got);
    if (text.size() > most) return Failure{ReadError{ReadError::Kind::too_large, {}}};
  } while (got == block);
  if (std::ferror(file.get()) != 0) return Failure{error_of(errno)};
  return text;
}

std::optional<ReadError> DiskFiles::write_new(const std::string& path, const std::string& text) {
  std::string beside = path + ".XXXXXX";
  const int file = mkstemp(beside.data());
  if (file < 0) return error_of(errno);
  int failed = 0;
  for (std::size_t at = 0; at < text.size() && failed == 0;) {
    const ssize_t wrote = ::write(file, text.data() + at, text.size() - at);
    if (wrote < 0 && errno != EINTR) failed = errno;
    if (wrote > 0) at += static_cast<std::size_t>(wrote);
  }
  if (failed == 0 && (fchmod(file, 0644) != 0 || fsync(file) != 0)) failed = errno;
  if (close(file) != 0 && failed == 0) failed = errno;
  // A link, unlike a rename, fails where something is there already.
  if (failed == 0 && link(beside.c_str(), path.c_str()) != 0) failed = errno;
  unlink(beside.c_str());
  if (failed == EEXIST) return ReadError{ReadError::Kind::exists, std::strerror(failed)};
  return failed == 0 ? std::nullopt : std::optional(error_of(failed));
}

std::string DiskFiles::canonical(const std::string& path) {
  std::error_code failed;
  const auto result = std::filesystem::weakly_canonical(path, failed);
  return failed ? path : result.string();
}

}  // namespace maslin
