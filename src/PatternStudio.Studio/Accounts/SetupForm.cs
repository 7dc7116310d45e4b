using System.Net.Mail;
using Microsoft.AspNetCore.Identity;

namespace PatternStudio.Studio.Accounts;

/// <summary>What the setup asks, and what is wrong with it.</summary>
internal sealed record SetupForm(string StudioName, string Email, string Password)
{
    public const int PasswordLeast = 10;
    public const int PasswordMost = 200;
    public const int PasswordLeastDifferent = 4;
    private const int EmailMost = 254;

    /// <summary>All that is wrong, field by field; empty where nothing is.</summary>
    public IReadOnlyList<FieldMessage> Faults() =>
        [.. Wording.NameFaults("studioName", "studio", StudioName, Studio.NameLength), .. EmailFaults(), .. PasswordFaults()];

    /// <summary>What the account store itself refused.</summary>
    public static IReadOnlyList<FieldMessage> FaultsOf(IdentityResult refused) =>
        [.. refused.Errors.Select(FaultOf).Distinct()];

    private static FieldMessage FaultOf(IdentityError error) => error.Code switch
    {
        nameof(IdentityErrorDescriber.DuplicateEmail) or nameof(IdentityErrorDescriber.DuplicateUserName) =>
            new("email", "There is an account with this e-mail address already. Sign in with it, or enter another address."),
        nameof(IdentityErrorDescriber.InvalidEmail) or nameof(IdentityErrorDescriber.InvalidUserName) =>
            new("email", "This is not a whole e-mail address. Enter one like name@example.com."),
        _ => new("password", error.Description),
    };

    private IEnumerable<FieldMessage> EmailFaults()
    {
        if (Email.Length == 0)
            yield return new("email", "Enter the e-mail address that you will sign in with.");
        else if (Email.Length > EmailMost || !MailAddress.TryCreate(Email, out MailAddress? address) || address.Address != Email)
            yield return new("email", "This is not a whole e-mail address. Enter one like name@example.com.");
    }

    private IEnumerable<FieldMessage> PasswordFaults()
    {
        if (Password.Length < PasswordLeast)
            yield return new("password", $"The password is too short. Use at least {PasswordLeast} characters; a few words together are fine.");
        else if (Password.Length > PasswordMost)
            yield return new("password", $"The password is too long. Use at most {PasswordMost} characters.");
        else if (Password.Distinct().Count() < PasswordLeastDifferent)
            yield return new("password", $"The password repeats the same few characters. Use at least {PasswordLeastDifferent} different ones.");
    }
}
