/** What the common errors of a disk mean, in words. */
const REASONS: Readonly<Record<string, string>> = {
  ENOENT: 'there is no such file or folder',
  EACCES: 'permission denied',
  EPERM: 'permission denied',
  EISDIR: 'it is a folder',
  ENOTDIR: 'part of the path is a file, not a folder',
  EEXIST: 'a file is in its place',
  ENOSPC: 'no space is left on the disk',
  EDQUOT: 'no space is left on the disk',
  EFBIG: 'the system allows no file of that size',
  EIO: 'the disk failed',
  EROFS: 'the disk is read-only',
  ENAMETOOLONG: 'the name is too long',
  ELOOP: 'its links lead in a circle',
  EAGAIN: 'it has nothing to give yet',
  EMFILE: 'too many files are open',
};

/** Why the disk refused, in words; an error that is not the disk's is a bug and is thrown again. */
export function whyNot(error: unknown): string {
  if (!(error instanceof Error) || !('code' in error) || typeof error.code !== 'string') throw error;
  return REASONS[error.code] ?? error.message;
}
