using Microsoft.AspNetCore.Identity;

namespace PatternStudio.Studio.Accounts;

/// <summary>A person who signs in: an e-mail address and a password.</summary>
public sealed class Account : IdentityUser<Guid>
{
    /// <summary>Longest name.</summary>
    public const int NameLength = 80;

    /// <summary>What others of the studio call her; empty where she gave none and is called by her e-mail address.</summary>
    public string Name { get; internal set; } = "";
}
