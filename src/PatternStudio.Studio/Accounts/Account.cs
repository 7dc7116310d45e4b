using Microsoft.AspNetCore.Identity;

namespace PatternStudio.Studio.Accounts;

/// <summary>A person who signs in: an e-mail address and a password.</summary>
public sealed class Account : IdentityUser<Guid>;
